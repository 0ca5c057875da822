using Calx.Measurement.Uncertainty;

namespace Calx.Bench.Beside;

/// <summary>A million draws of JCGM 101:2008, 9.3, shortest interval included, beside numpy.</summary>
internal static class MonteCarloBeside
{
    private const int Draws = 1_000_000;

    // Closed form and quadrature (peers/montecarlo.py, implementation 'exact').
    private const double ExactDeviation = 0.075480;
    private const double ExactWidth = 0.29913;

    public static bool Run(SideBySide side)
    {
        MeasurementModel model = MassCalibration.Model();
        ulong seed = 0;
        return side.Compare(
            "JCGM 101 9.3, 1 000 000 draws",
            "draws",
            new Peer("montecarlo.py", "1000000", "numpy"),
            Draws,
            () => Agrees(MonteCarlo.Run(model, new MonteCarloSettings(Draws, seed: ++seed))),
            least: 8);
    }

    private static bool Agrees(MonteCarloOutcome outcome) =>
        outcome is MonteCarloOutcome.Finished { Result: { } result }
        && Math.Abs(result.StandardUncertainty - ExactDeviation) < 3e-4
        && Math.Abs(result.Shortest.Width - ExactWidth) < 1.5e-3;
}
