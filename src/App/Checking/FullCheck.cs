using Calx.Chemistry.Elements;
using Calx.Practicals.Checking;

namespace Calx.App.Checking;

/// <summary>A check of a practical's file with its trial run.</summary>
/// <param name="File">The file's name, as the person wrote it.</param>
/// <param name="Checked">What was found in the file.</param>
/// <param name="Trial">The uses that were tried out; empty where faults kept them from it.</param>
internal sealed record FullCheck(string File, CheckedPractical Checked, IReadOnlyList<TrialStep> Trial)
{
    /// <summary>Whether nothing is to be said against it.</summary>
    public bool IsInOrder => Checked.IsInOrder && Trial.All(t => t.Failure is null);

    /// <summary>Checks a text.</summary>
    public static FullCheck Of(string text, string file, CancellationToken cancellation)
    {
        CheckedPractical found = PracticalCheck.Of(text, file, AtomicWeights.Iupac2024);
        return new FullCheck(file, found, found.Practical is null ? [] : TrialRun.Of(found.Practical, cancellation));
    }
}
