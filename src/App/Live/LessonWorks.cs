using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Inference;
using Calx.Practicals.Marking;
using Calx.Practicals.Readings;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using System.Globalization;

namespace Calx.App.Live;

/// <summary>
/// What the students of a lesson have to be marked, as its journal has it now: each with the readings that count of the group that they
/// are in. A group that shares another's data has those; one that started again, or goes on with simulated readings, those of its
/// present trial. Who was away has the readings of a catch-up pack.
/// </summary>
public sealed class LessonWorks
{
    private readonly LessonView view;
    private readonly ILookup<int, CellState> cells;

    /// <summary>What is read off a group's curve, once for all who are in it: a curve takes tenths of a second.</summary>
    private readonly Dictionary<int, IReadOnlyDictionary<string, CurveReadOff>> curves = [];

    private LessonWorks(LessonView view, IReadOnlyList<Member> members)
    {
        this.view = view;
        cells = view.Table.Where(c => c.Cell is { Group: 0, Member: > 0 }).ToLookup(c => c.Cell.Member);
        IReadOnlyDictionary<int, string> names = StudentNames.Of(members);
        Each = [.. members.OrderBy(m => m.Number).Select(m => Of(m, names[m.Number])).OfType<LessonWork>()];
        Works = [.. Each.Select(w => w.Work)];
        Overrulings = [.. Each.SelectMany(w => w.Decisions.Values).Select(d => d.Overruling).OfType<Overruling>()];
    }

    /// <summary>Each student's, by number in the class: all who were here, and of those who were away who has a pack or answered.</summary>
    public IReadOnlyList<LessonWork> Each { get; }

    /// <summary>The same for the marker, in the same order.</summary>
    public IReadOnlyList<StudentWork> Works { get; }

    /// <summary>The teacher's own marks that hold.</summary>
    public IReadOnlyList<Overruling> Overrulings { get; }

    /// <summary>Puts them together.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="members">Its class.</param>
    public static LessonWorks Of(LessonView view, IReadOnlyList<Member> members)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(members);
        return new LessonWorks(view, members);
    }

    /// <summary>The work of a student by number in the class, or null.</summary>
    public LessonWork? Find(int member) => Each.FirstOrDefault(w => w.Member.Number == member);

    private LessonWork? Of(Member member, string name)
    {
        Dictionary<string, CellState> answered = Cells(member.Number, Acts.AnswerPrefix);
        Dictionary<string, KeptEntry> entries = answered.Where(a => AnswerWords.Of(a.Value) is not null)
            .ToDictionary(a => a.Key, a => a.Value.Current, StringComparer.Ordinal);
        Dictionary<string, string> answers = entries.Keys.ToDictionary(id => id, id => AnswerWords.Of(answered[id])!, StringComparer.Ordinal);
        MemberState state = view.State.Members.GetValueOrDefault(member.Number) ?? MemberState.Unknown;
        CatchUpPack? pack = state.Presence == MemberState.Away ? view.Room.Packs.Find(view, member.Number) : null;
        if (state.Presence == MemberState.Away && pack is null && answers.Count == 0)
        {
            return null;
        }

        int? source = pack is null && state.Group >= 1 && state.Group <= view.GroupCount ? SourceOf(view, state.Group) : null;
        var work = new StudentWork(
            name,
            pack is not null ? PackHeatings.Readings(pack, answers) : source is int group ? ReadingsOf(view, group) : new Dictionary<string, IReadOnlyList<WrittenNumber>>(),
            answers,
            group: source?.ToString(CultureInfo.InvariantCulture))
        {
            ReadOff = pack is null && source is int own ? ReadOffOf(own) : ReadOff(pack?.Series),
        };
        return new LessonWork(
            member, work, entries,
            Cells(member.Number, Acts.MarkPrefix).ToDictionary(c => c.Key, c => Decision(name, c.Key, c.Value, answered.GetValueOrDefault(c.Key)), StringComparer.Ordinal))
        {
            Cells = answered,
            Pack = pack,
        };
    }

    private IReadOnlyDictionary<string, CurveReadOff> ReadOffOf(int group) =>
        curves.TryGetValue(group, out IReadOnlyDictionary<string, CurveReadOff>? known) ? known : curves[group] = ReadOff(view.ReadingsOf(group).Series);

    private IReadOnlyDictionary<string, CurveReadOff> ReadOff(GroupSeries? series)
    {
        int decimals = series is null ? 0 : series.Points.Select(p => p.Value.Decimals).DefaultIfEmpty(2).Max();
        return CurveReadOff.Of(view.Practical, series, Math.Pow(10, -decimals));
    }

    /// <summary>A member's cells of one kind, by what was asked.</summary>
    private Dictionary<string, CellState> Cells(int member, string prefix) => cells[member]
        .Where(c => c.Cell.Trial == 1 && c.Cell.What.Length > prefix.Length && c.Cell.What.StartsWith(prefix, StringComparison.Ordinal))
        .ToDictionary(c => c.Cell.What[prefix.Length..], StringComparer.Ordinal);

    private static MarkDecision Decision(string student, string id, CellState cell, CellState? answered)
    {
        if (cell.Current.Entry.Content is not EntryContent.Mark mark)
        {
            return new MarkDecision(null, cell, HasChanged: false);
        }

        string given = AnswerWords.Before(answered, cell.Current.Number) ?? "";
        return new MarkDecision(
            new Overruling(student, id, (int)Math.Round(mark.Marks, MidpointRounding.AwayFromZero), mark.Comment ?? "", given),
            cell,
            HasChanged: given != (AnswerWords.Of(answered) ?? ""));
    }

    /// <summary>A group's readings of its present trial, by id.</summary>
    internal static IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> ReadingsOf(LessonView view, int group) => view.ReadingsOf(group).Readings.GroupBy(r => r.BaseId)
        .ToDictionary(g => g.Key, IReadOnlyList<WrittenNumber> (g) => [.. g.OrderBy(r => r.Occurrence).Select(r => r.Value)], StringComparer.Ordinal);

    /// <summary>The group whose data a group has: a group that joined one that joined yet another has the last one's; those that joined
    /// each other have their own.</summary>
    internal static int SourceOf(LessonView view, int group)
    {
        int source = group;
        for (int joins = 0; joins < view.GroupCount; joins++)
        {
            if (view.State.Group(source).JoinedGroup is not int other || other < 1 || other > view.GroupCount)
            {
                return source;
            }

            source = other;
        }

        return group;
    }
}
