using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics;

/// <summary>What a bootstrap found.</summary>
public abstract record BootstrapResult
{
    private BootstrapResult()
    {
    }

    /// <summary>There is an interval.</summary>
    public sealed record Found : BootstrapResult
    {
        internal Found(
            double estimate, double standardError, CoverageInterval interval, BootstrapCorrections corrections)
        {
            Estimate = estimate;
            StandardError = standardError;
            Interval = interval;
            BiasCorrection = corrections.Bias;
            Acceleration = corrections.Acceleration;
            Resamples = corrections.Resamples;
        }

        /// <summary>The statistic of the data themselves.</summary>
        public double Estimate { get; }

        /// <summary>The standard deviation of the statistic over the resamples.</summary>
        public double StandardError { get; }

        /// <summary>The bias-corrected and accelerated interval.</summary>
        public CoverageInterval Interval { get; }

        /// <summary>z₀: how far, in normal standard deviations, the resamples' median lies from the estimate.</summary>
        public double BiasCorrection { get; }

        /// <summary>a: how the spread of the statistic grows with its value; 0 for a symmetrical one.</summary>
        public double Acceleration { get; }

        /// <summary>How many resamples there were.</summary>
        public int Resamples { get; }
    }

    /// <summary>There is no interval.</summary>
    public sealed record NotFound : BootstrapResult
    {
        internal NotFound(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}

/// <summary>What moved the ends of a bootstrap interval.</summary>
internal sealed record BootstrapCorrections(double Bias, double Acceleration, int Resamples);
