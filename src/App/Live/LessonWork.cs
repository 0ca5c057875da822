using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Marking;
using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.App.Live;

/// <summary>What one student of a lesson has to be marked.</summary>
/// <param name="Member">Who.</param>
/// <param name="Work">Readings and answers.</param>
/// <param name="Answers">The entry that counts of each answer, by what was asked.</param>
/// <param name="Decisions">The teacher's own marks, by what was asked; one that was taken back is there too.</param>
public sealed record LessonWork(
    Member Member, StudentWork Work, IReadOnlyDictionary<string, KeptEntry> Answers, IReadOnlyDictionary<string, MarkDecision> Decisions)
{
    /// <summary>The catch-up pack that the readings are from, or null where they are a group's.</summary>
    public CatchUpPack? Pack { get; init; }

    /// <summary>The readings of a student who answered this: of a pack those that were used.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> ReadingsFor(IReadOnlyDictionary<string, string> answers) =>
        Pack is null ? Work.Readings : PackHeatings.Readings(Pack, answers);

    /// <summary>Everything that was answered, those that were corrected too, by what was asked.</summary>
    public IReadOnlyDictionary<string, CellState> Cells { get; init; } = new Dictionary<string, CellState>();

    /// <summary>What was answered before the answer that counts, and beside it, in the order of the journal.</summary>
    public IEnumerable<KeptEntry> OthersTo(string id) => Cells.TryGetValue(id, out CellState? cell)
        ? cell.History.Where(k => k.Entry.Content is EntryContent.Answer && k != AnswerTo(id)) : [];

    /// <summary>The teacher's decision on an answer, or null.</summary>
    public MarkDecision? DecisionOn(string id) => Decisions.GetValueOrDefault(id);

    /// <summary>The entry of an answer, or null where nothing was answered.</summary>
    public KeptEntry? AnswerTo(string id) => Answers.GetValueOrDefault(id);
}
