namespace Calx.Engine.Tests;

/// <summary>Proofs by simulation run a fixed seeded sample; <c>./test --long</c> runs them in full.</summary>
internal static class LongProofs
{
    /// <summary>Whether the proofs are to run in full.</summary>
    private static bool Wanted => Environment.GetEnvironmentVariable("CALX_LONG") == "1";

    /// <summary>How many cases to draw.</summary>
    public static int Cases(int sample, int inFull) => Wanted ? inFull : sample;

    /// <summary>Three standard errors of a share near <paramref name="share"/> seen in so many cases.</summary>
    public static double ThreeErrors(double share, int cases) => 3 * Math.Sqrt(share * (1 - share) / cases);
}
