namespace Calx.Practicals.Findings;

/// <summary>What is said of data that nobody measured.</summary>
public static class SimulatedData
{
    /// <summary>In one sentence, before anything else.</summary>
    public const string Sentence =
        "These readings are simulated and not measured: what follows is what such a class might find, and no evidence of anything.";
}
