namespace Calx.Measurement.Statistics.Series;

/// <summary>How readings scatter about their curve. The rounding to the display's step is always there besides.</summary>
public abstract record SeriesNoise
{
    private SeriesNoise()
    {
    }

    /// <summary>Each reading by itself, by an amount that the scatter tells.</summary>
    public sealed record Independent : SeriesNoise;

    /// <summary>
    /// Partly by itself, partly in common with readings near in time, with a correlation that falls as e^(-Δt/τ); both parts
    /// and τ are found from the scatter. A draught, or a first-order autoregression at even times.
    /// </summary>
    public sealed record Correlated : SeriesNoise;

    /// <summary>Partly by itself, partly as a random walk; both are found from the scatter. A display that wanders.</summary>
    public sealed record Wandering : SeriesNoise;

    /// <summary>Known beforehand, for instance from a vessel on which nothing happens.</summary>
    public sealed record Known : SeriesNoise
    {
        /// <summary>Takes the parts.</summary>
        /// <param name="independent">Standard deviation of what belongs to each reading alone, rounding left out, 0 or more.</param>
        /// <param name="correlated">Standard deviation of what readings near in time share, 0 or more.</param>
        /// <param name="correlationTime">The time in which that correlation falls to 1/e, above 0, in the unit of the times.</param>
        /// <param name="walkPerRootTime">Standard deviation of the wandering after one unit of time, 0 or more.</param>
        /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
        public Known(double independent, double correlated = 0, double correlationTime = 1, double walkPerRootTime = 0)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(independent);
            ArgumentOutOfRangeException.ThrowIfNegative(correlated);
            ArgumentOutOfRangeException.ThrowIfNegative(walkPerRootTime);
            Require.Positive(correlationTime);
            Require.Finite([independent, correlated, walkPerRootTime], 3, nameof(independent));
            if (correlated > 0 && walkPerRootTime > 0)
            {
                throw new ArgumentOutOfRangeException(
                    nameof(walkPerRootTime), walkPerRootTime, "A shared part and a random walk at once are not told apart.");
            }

            (IndependentPart, CorrelatedPart, CorrelationTime, WalkPerRootTime) =
                (independent, correlated, correlationTime, walkPerRootTime);
        }

        /// <summary>Standard deviation of what belongs to each reading alone, rounding left out.</summary>
        public double IndependentPart { get; }

        /// <summary>Standard deviation of what readings near in time share.</summary>
        public double CorrelatedPart { get; }

        /// <summary>The time in which that correlation falls to 1/e.</summary>
        public double CorrelationTime { get; }

        /// <summary>Standard deviation of the wandering after one unit of time.</summary>
        public double WalkPerRootTime { get; }
    }
}
