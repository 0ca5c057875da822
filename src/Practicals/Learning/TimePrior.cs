using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>The file's three times as a law of the logarithm: mean and standard deviation of ln t under the PERT law of the plan.</summary>
internal sealed class TimePrior
{
    /// <summary>Nobody keeps a time to better than this, on the scale of the logarithm: judgement.</summary>
    private const double LeastSpread = 0.05;

    private const int Parts = 400;

    public TimePrior(StepMinutes minutes)
    {
        Minutes = minutes;
        var law = new Pert(minutes.Least, minutes.Likely, minutes.Most);
        double[] logs = [.. Enumerable.Range(0, Parts).Select(i => Math.Log(law.Quantile((i + 0.5) / Parts)))];
        LogMean = logs.Average();
        double mean = LogMean;
        Spread = Math.Max(LeastSpread, Math.Sqrt(logs.Average(x => (x - mean) * (x - mean))));
    }

    public StepMinutes Minutes { get; }

    /// <summary>Mean of ln t, t in min.</summary>
    public double LogMean { get; }

    /// <summary>Standard deviation of ln t.</summary>
    public double Spread { get; }

    /// <summary>The three times moved and stretched on the scale of the logarithm; a least time of 0 stays 0.</summary>
    /// <param name="shift">By how much ln t moves.</param>
    /// <param name="spread">Its new standard deviation.</param>
    public StepMinutes Moved(double shift, double spread)
    {
        double stretch = spread / Spread;
        return new StepMinutes(At(Minutes.Least), At(Minutes.Likely), At(Minutes.Most));

        double At(double value) => value == 0 ? 0 : Math.Exp(LogMean + shift + ((Math.Log(value) - LogMean) * stretch));
    }
}
