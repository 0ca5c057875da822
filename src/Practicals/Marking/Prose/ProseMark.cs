using Calx.Practicals.Definition;

namespace Calx.Practicals.Marking.Prose;

/// <summary>One answer in words. No machine marks it: it waits for the teacher, its words of measurement pointed out.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Text">As written; empty for nothing.</param>
/// <param name="Words">The words of measurement in it, in the order in which they stand.</param>
/// <param name="Marks">The teacher's marks; 0 for nothing written, null while it waits.</param>
/// <param name="Comment">What the teacher says of it, or null.</param>
public sealed record ProseMark(SheetQuestion Question, string Text, IReadOnlyList<WordUse> Words, int? Marks, string? Comment)
{
    /// <summary>Marks to be earned: one for each point that is expected.</summary>
    public int Of => Question.Expected.Count;

    /// <summary>Whether it waits for the teacher.</summary>
    public bool IsWaiting => Marks is null;

    internal static ProseMark From(SheetQuestion question, string text, MeasurementWords words, Overruling? given) => new(
        question, text, words.In(text), given?.Marks ?? (text.Length == 0 ? 0 : null), given is { Reason.Length: > 0 } ? given.Reason : null);
}
