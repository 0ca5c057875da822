using Calx.Measurement.Distributions;

namespace Calx.Bench.Beside;

/// <summary>A million normal draws beside numpy's generator.</summary>
internal static class RandomStreamBeside
{
    public static bool Run(SideBySide side)
    {
        double[] draws = new double[1_000_000];
        ulong seed = 0;
        return side.Compare("normal draws, one thread", "draws", new Peer("normals.py", "1000000"), draws.Length, () =>
        {
            new RandomStream(++seed, 0).FillNormal(draws);
            return Math.Abs(draws.Average()) < 5e-3;
        });
    }
}
