using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.App.Learning;

/// <summary>What past lessons say of a practical's numbers, for one class or any of the school.</summary>
/// <param name="Practical">The practical as its file has it.</param>
/// <param name="ClassName">The class; empty for any.</param>
/// <param name="Priors">What they say.</param>
/// <param name="Lessons">How many lessons were looked at.</param>
/// <param name="Groups">Groups with readings of their own in them.</param>
/// <param name="Left">Why others were left out.</param>
public sealed record Learned(Practical Practical, string ClassName, LearnedPriors Priors, int Lessons, int Groups, IReadOnlyList<LeftOut> Left)
{
    /// <summary>Names of the school's classes.</summary>
    public IReadOnlyList<string> Classes { get; init; } = [];

    /// <summary>How many classes, by name, the lessons were of.</summary>
    public int ClassesSeen { get; init; }

    /// <summary>Changes that can be accepted: those whose number, as it is shown, is not the file's.</summary>
    public IEnumerable<LearnedChange> Open => Priors.Changes.Where(c => NumberText.Before(c) != NumberText.After(c));

    /// <summary>What was looked at, in a sentence.</summary>
    public string RestsOn => Lessons == 0
        ? "No lesson of this practical is over yet, so nothing was learned."
        : $"From {LearnedText.Lessons(Lessons)} of {(ClassesSeen == 1 ? "one class" : FormattableString.Invariant($"{ClassesSeen} classes"))}, with {FormattableString.Invariant($"{Groups}")} groups that weighed.";

    /// <summary>What was not looked at and why, or null.</summary>
    public string? LeftInWords => Left.Count == 0 ? null
        : "Left out: " + string.Join(", ", Left.GroupBy(l => l).OrderBy(g => g.Key).Select(g => Words(g.Key, g.Count()))) + ".";

    private static string Words(LeftOut why, int lessons)
    {
        string number = lessons == 1 ? "one" : FormattableString.Invariant($"{lessons}");
        return why switch
        {
            LeftOut.TrialRun => $"{number} trial run{(lessons == 1 ? "" : "s")} of your own",
            LeftOut.Cover => $"{number} cover lesson{(lessons == 1 ? "" : "s")} with simulated readings",
            LeftOut.NotOver => $"{number} that {(lessons == 1 ? "is" : "are")} not over",
            LeftOut.Unreadable => $"{number} that cannot be read",
            LeftOut.TooOld => $"{number} older than the latest hundred",
            _ => throw new InvalidOperationException("No other reason exists."),
        };
    }
}
