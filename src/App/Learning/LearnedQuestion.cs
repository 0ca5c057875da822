using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.App.Learning;

/// <summary>A check of a balance.</summary>
/// <param name="Balance">Its letter.</param>
/// <param name="Month">When, in months.</param>
/// <param name="Error">Shown less marked, in divisions.</param>
/// <param name="Uncertainty">Standard uncertainty of one reading, in divisions.</param>
internal readonly record struct DatedCheck(string Balance, double Month, double Error, double Uncertainty);

/// <summary>Everything on which an answer of past lessons rests.</summary>
/// <param name="Practical">The practical as its file has it.</param>
/// <param name="ClassKey">The class, by its key; empty for any.</param>
/// <param name="Groups">Groups of the next lesson.</param>
/// <param name="Lessons">What was seen; of a lesson that has not moved on the very same.</param>
/// <param name="Checks">Checks of balances.</param>
internal sealed record LearnedQuestion(Practical Practical, string ClassKey, int Groups, IReadOnlyList<PastLesson> Lessons, IReadOnlyList<DatedCheck> Checks)
{
    /// <summary>Whether another one asks the same.</summary>
    public bool IsSame(LearnedQuestion other) => ReferenceEquals(Practical, other.Practical) && ClassKey == other.ClassKey && Groups == other.Groups
        && Lessons.Count == other.Lessons.Count && Lessons.Zip(other.Lessons).All(l => ReferenceEquals(l.First, l.Second)) && Checks.SequenceEqual(other.Checks);
}
