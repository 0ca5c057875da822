using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

/// <summary>A series whose truth is known: marble chips and acid, a flask on a balance. The laws of the three orders are
/// written here once more, from a textbook, with rate constants.</summary>
internal sealed record InventedSeries(KineticOrder Order, double Start, double Loss, double HalfLife)
{
    public int Count { get; init; } = 61;

    public double Gap { get; init; } = 10;

    public double Noise { get; init; } = 0.01;

    /// <summary>Standard deviation of what neighbours share, and the time in which that correlation falls to 1/e.</summary>
    public (double Size, double Time) Shared { get; init; } = (0, 1);

    public double WalkPerRootTime { get; init; }

    /// <summary>Standard deviation of the steady drift.</summary>
    public double Drift { get; init; }

    public int Decimals { get; init; } = 2;

    public double Lag { get; init; }

    /// <summary>Added to each reading by its place, before rounding.</summary>
    public Func<int, double> Disturbed { get; init; } = _ => 0;

    public double True(double time)
    {
        double t = Math.Max(0, time - Lag);
        double left = Order switch
        {
            KineticOrder.Zeroth => Loss * Math.Max(0, 1 - (t / (2 * HalfLife))),
            KineticOrder.First => Loss * Math.Exp(-Math.Log(2) / HalfLife * t),
            _ => 1 / ((1 / Loss) + (t / (Loss * HalfLife))),
        };
        return Start - Loss + left;
    }

    public TimeSeries Draw(ulong seed, ulong stream) => Read(new RandomStream(seed, stream));

    private TimeSeries Read(RandomStream draws)
    {
        double drift = Drift * draws.NextNormal();
        double shared = Shared.Size * draws.NextNormal();
        double walk = 0;
        double kept = Math.Exp(-Gap / Shared.Time);
        var readings = new TimedReading[Count];
        for (int i = 0; i < Count; i++)
        {
            double time = i * Gap;
            if (i > 0)
            {
                shared = (kept * shared) + (Shared.Size * Math.Sqrt(1 - (kept * kept)) * draws.NextNormal());
                walk += WalkPerRootTime * Math.Sqrt(Gap) * draws.NextNormal();
            }

            double reading = True(time) + (drift * time) + shared + walk + (Noise * draws.NextNormal()) + Disturbed(i);
            readings[i] = new TimedReading(
                new WrittenNumber((decimal)time), new WrittenNumber(Math.Round((decimal)reading, Decimals, MidpointRounding.AwayFromZero)));
        }

        return Assert.IsType<TimeSeriesResult.Series>(TimeSeries.From(readings, Math.Pow(10, -Decimals))).Value;
    }
}
