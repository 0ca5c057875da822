using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Answers;

/// <summary>Who of a class may answer on a device. Names are shown where the teacher shows them to the class, else numbers.</summary>
/// <param name="view">The lesson.</param>
/// <param name="members">The class, by number.</param>
public sealed class ClassRoll(LessonView view, IReadOnlyList<Member> members)
{
    private readonly HashSet<int> packs = [.. view.Entries.Where(e => e.Entry.Cell is { What: Acts.CatchUp, Member: > 0 }).Select(e => e.Entry.Cell.Member)];

    /// <summary>Whether the class has a list at all.</summary>
    public bool IsEmpty => members.Count == 0;

    /// <summary>What a student is called on students' pages.</summary>
    public string NameOf(int number) => view.State.NamesShown && members.FirstOrDefault(m => m.Number == number)?.Name is { Length: > 0 } name
        ? name : string.Create(CultureInfo.InvariantCulture, $"Student {number}");

    /// <summary>A student's group today; 0 for none, and for one who was away and has readings of their own.</summary>
    public int GroupOf(int number) => Of(number) is { } state && !HasPack(number) ? state.Group : 0;

    /// <summary>Whether a student was away and works with readings from a catch-up pack.</summary>
    public bool HasPack(int number) => Of(number).Presence == MemberState.Away && packs.Contains(number);

    /// <summary>Whether the student may answer on a device: its group's members, those of no group yet, and on a device without a
    /// group anybody who was here or has a pack.</summary>
    public bool MayChoose(Seat seat, int number)
    {
        ArgumentNullException.ThrowIfNull(seat);
        return members.Any(m => m.Number == number) && (Of(number).Presence != MemberState.Away || packs.Contains(number))
            && (seat.Role != SeatRole.Group || GroupOf(number) == seat.Group || (GroupOf(number) == 0 && !HasPack(number)));
    }

    /// <summary>Those to choose from on a device: its group's members first, then those whom the teacher has put into no group.</summary>
    public IReadOnlyList<(string Heading, IReadOnlyList<StudentChoice> Students)> For(Seat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        return
        [
            .. members.Where(m => MayChoose(seat, m.Number)).OrderBy(m => m.Number)
                .GroupBy(m => (HasPack(m.Number), GroupOf(m.Number))).OrderBy(g => g.Key.Item1).ThenBy(g => g.Key.Item2 == 0).ThenBy(g => g.Key.Item2)
                .Select(g => (Heading(g.Key.Item1, g.Key.Item2), (IReadOnlyList<StudentChoice>)[.. g.Select(m => Choice(seat, m.Number))])),
        ];
    }

    /// <summary>One of them.</summary>
    public StudentChoice Choice(Seat seat, int number)
    {
        ArgumentNullException.ThrowIfNull(seat);
        AnswersFor devices = AnswersFor.Of(view, number);
        int answered = view.Table.Count(c => c.Cell.Group == 0 && c.Cell.Member == number && c.Current.Entry.Content is EntryContent.Answer);
        return new StudentChoice(number, NameOf(number), answered, devices.Word is not null && !devices.Has(seat.Device));
    }

    private MemberState Of(int number) => view.State.Members.GetValueOrDefault(number) ?? MemberState.Unknown;

    private static string Heading(bool hasPack, int group) => hasPack ? "With a catch-up pack"
        : group == 0 ? "In no group yet" : string.Create(CultureInfo.InvariantCulture, $"Group {group}");
}
