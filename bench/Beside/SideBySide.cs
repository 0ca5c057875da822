using System.Diagnostics;
using System.Globalization;

namespace Calx.Bench.Beside;

/// <summary>Times our computation and a peer's in turn, so that a busy machine is busy for both, and prints medians.</summary>
internal sealed class SideBySide
{
    private const int UsualPasses = 5;
    private const double WarmUpSeconds = 1.5;
    private const double SecondsAPass = 0.5;

    /// <param name="passes">How often each is timed, as typed; anything but a number is the usual 5.</param>
    public SideBySide(string passes) =>
        Passes = int.TryParse(passes, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number > 0
            ? number
            : UsualPasses;

    public int Passes { get; }

    /// <summary>Compares rates and prints a line for each and the ratio.</summary>
    /// <param name="what">The computation, for instance 'JCGM 101 9.3, 1 000 000 draws'.</param>
    /// <param name="unit">What is counted, for instance 'draws'.</param>
    /// <param name="peer">The peer.</param>
    /// <param name="size">How many units our computation does.</param>
    /// <param name="ours">Our computation; true where its answer agrees with its check.</param>
    /// <param name="least">The least ratio of our rate to the peer's that is wanted; 0 where none is.</param>
    /// <returns>True where all answers agreed and the ratio is large enough.</returns>
    public bool Compare(string what, string unit, Peer peer, double size, Func<bool> ours, double least = 0)
    {
        bool ok = true;
        Repeat(ours, WarmUpSeconds, ref ok);
        var ourRates = new List<double>();
        var peerRates = new List<double>();
        for (int pass = 1; pass <= Passes; pass++)
        {
            PeerRun run = peer.Run();
            ok &= run.Ok;
            peerRates.Add(run.Size / run.Seconds);
            ourRates.Add(size / Repeat(ours, SecondsAPass, ref ok));
        }

        double ratio = Median(ourRates) / Median(peerRates);
        Console.WriteLine($"{what}: medians of {Passes} passes in turn, {Environment.ProcessorCount} processors");
        Print("this program", unit, ourRates);
        Print($"{peer.Script} {string.Join(' ', peer.Arguments)}", unit, peerRates);
        string wanted = least > 0 ? string.Create(CultureInfo.InvariantCulture, $" (wanted: {least})") : "";
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  ratio {ratio:f2}{wanted}"));
        Console.WriteLine($"  checks {(ok ? "ok" : "FAILED")}");
        return ok && ratio >= least;
    }

    // Seconds of a run: the median of as many as fit.
    private static double Repeat(Func<bool> run, double seconds, ref bool ok)
    {
        var all = new List<double>();
        var total = Stopwatch.StartNew();
        while (all.Count == 0 || total.Elapsed.TotalSeconds < seconds)
        {
            var one = Stopwatch.StartNew();
            ok &= run();
            all.Add(one.Elapsed.TotalSeconds);
        }

        return Median(all);
    }

    private static double Median(List<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    private static void Print(string name, string unit, List<double> rates) =>
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  {name,-40} {Median(rates),15:n0} {unit}/s   ({rates.Min():n0} to {rates.Max():n0})"));
}
