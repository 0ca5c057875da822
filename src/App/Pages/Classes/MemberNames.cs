using System.Globalization;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Classes;

/// <summary>What a member is called on a page.</summary>
public static class MemberNames
{
    /// <summary>The name, or the number where there is none.</summary>
    public static string Of(Member member) => member.Name.Length > 0 ? member.Name : string.Create(CultureInfo.InvariantCulture, $"no. {member.Number}");

    /// <summary>Names that several members share, so that nobody can tell whose readings are whose.</summary>
    public static IReadOnlyList<string> Shared(IEnumerable<Member> members) =>
    [
        .. members.Where(m => m.Name.Length > 0).GroupBy(m => m.Name, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key),
    ];
}
