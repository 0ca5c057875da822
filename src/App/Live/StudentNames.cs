using System.Globalization;
using Calx.App.Pages.Classes;
using Calx.Records.Lessons;

namespace Calx.App.Live;

/// <summary>What students are called where one name stands for one student: shared names have the number in the class behind them.</summary>
public static class StudentNames
{
    /// <summary>Names by number in the class, each of them once.</summary>
    public static IReadOnlyDictionary<int, string> Of(IReadOnlyList<Member> members)
    {
        ArgumentNullException.ThrowIfNull(members);
        HashSet<string> shared = [.. MemberNames.Shared(members).Select(n => n.ToUpperInvariant())];
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        var names = new Dictionary<int, string>();
        foreach (Member member in members.OrderBy(m => m.Number))
        {
            string name = MemberNames.Of(member);
            string number = string.Create(CultureInfo.InvariantCulture, $" (no. {member.Number})");
            name = shared.Contains(name.ToUpperInvariant()) ? name + number : name;
            while (!taken.Add(name))
            {
                // Somebody is called what another one's number was put into.
                name += number;
            }

            names[member.Number] = name;
        }

        return names;
    }
}
