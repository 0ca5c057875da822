using Calx.App.Checking;
using Calx.Chemistry.Elements;
using Calx.Practicals.Checking;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Pages.Practicals;

/// <summary>What the text of a practical's file comes to: findings, theory values, the table, what readings will look like.</summary>
public sealed class WritingPreview
{
    /// <summary>Groups drawn for a look: quick, and good for two figures.</summary>
    private const int Draws = 400;

    private WritingPreview(CheckedPractical found, Prediction? prediction, string? noPrediction, IReadOnlyList<(string What, string? Failure)> trial)
    {
        Found = found;
        Prediction = prediction;
        NoPrediction = noPrediction;
        Trial = trial;
    }

    /// <summary>What the check found.</summary>
    public CheckedPractical Found { get; }

    /// <summary>The practical, or null where the file has faults.</summary>
    public Practical? Practical => Found.Practical;

    /// <summary>What a class will probably weigh, or null.</summary>
    public Prediction? Prediction { get; }

    /// <summary>Why there is no prediction; null where there is one, or no practical yet.</summary>
    public string? NoPrediction { get; }

    /// <summary>The uses that were tried out, each with what went wrong; empty where that was not asked for.</summary>
    public IReadOnlyList<(string What, string? Failure)> Trial { get; }

    /// <summary>Looks at a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="tries">Whether it is tried out on an invented class too.</param>
    /// <param name="cancellation">Gives the work up.</param>
    public static WritingPreview Of(string text, bool tries, CancellationToken cancellation)
    {
        CheckedPractical found = PracticalCheck.Of(text, "file", AtomicWeights.Iupac2024);
        if (found.Practical is not Practical practical)
        {
            return new WritingPreview(found, null, null, []);
        }

        (string, string?)[] trial = tries ? [.. TrialRun.Of(practical, cancellation).Select(t => (t.What, t.Failure))] : [];
        try
        {
            Prediction prediction = Prediction.Of(new Circumstances(practical), AtomicWeights.Iupac2024, new SimulationPlan(1), Draws, cancellation: cancellation);
            return new WritingPreview(found, prediction, null, trial);
        }
        catch (Exception reason) when (reason is not (OperationCanceledException or OutOfMemoryException))
        {
            // A file in writing may ask for what cannot be drawn; its writer is told, and goes on.
            return new WritingPreview(found, null, reason.Message.ReplaceLineEndings(" "), trial);
        }
    }
}
