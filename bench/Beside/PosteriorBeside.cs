using System.Globalization;
using System.Text.Json;
using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>Which of eight faults explains four rounded weighings, beside prior draws in numpy; both against three-dimensional
/// quadrature.</summary>
internal static class PosteriorBeside
{
    private const double LeastRatio = 25;

    /// <summary>Against the quadrature, relative, where a hypothesis has a thousandth of the whole.</summary>
    private const double Agreement = 2e-4;

    public static bool Run(SideBySide side)
    {
        var own = new FourReadings();
        double[][] judge = [.. Logs(new Peer("posterior.py", "200000", "grid").Run())];
        double[][] draws = [.. Logs(new Peer("posterior.py", "200000", "numpy").Run())];
        double[][] ours = [.. FourReadings.Groups.Select(own.LogMarginals)];
        double worstOfOurs = Worst(ours, judge);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"largest relative departure from quadrature: this program {worstOfOurs:E1}, 200000 draws each {Worst(draws, judge):E1}"));
        bool faster = side.Compare(
            "marginal likelihoods of 8 faults, 5 groups of 4 readings",
            "passes over the groups",
            new Peer("posterior_passes.py"),
            1,
            () => Worst([.. FourReadings.Groups.Select(own.LogMarginals)], judge) < Agreement,
            LeastRatio);
        return faster && worstOfOurs < Agreement;
    }

    private static double Worst(double[][] found, double[][] judge) =>
        judge.Zip(found).Max(pair =>
        {
            double top = pair.First.Max();
            return pair.First.Zip(pair.Second).Where(l => l.First > top - Math.Log(1000)).Max(l => Math.Abs(Math.Exp(l.Second - l.First) - 1));
        });

    private static IEnumerable<double[]> Logs(PeerRun run) =>
        run.Line.GetProperty("log_marginal").EnumerateArray().Select(group =>
            group.EnumerateArray().Select(v => v.ValueKind == JsonValueKind.Null ? double.NegativeInfinity : v.GetDouble()).ToArray());
}
