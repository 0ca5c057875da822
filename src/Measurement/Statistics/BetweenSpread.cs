namespace Calx.Measurement.Statistics;

/// <summary>What is known of the spread of true values between groups, apart from the spread within each.</summary>
public abstract record BetweenSpread
{
    private BetweenSpread()
    {
    }

    /// <summary>The best estimate as a standard deviation in the unit of the values; 0 where none was seen.</summary>
    public abstract double StandardDeviation { get; }

    /// <summary>The groups differ by more than their own spread explains.</summary>
    public sealed record Found : BetweenSpread
    {
        internal Found(double standardDeviation) => StandardDeviation = standardDeviation;

        /// <inheritdoc/>
        public override double StandardDeviation { get; }
    }

    /// <summary>
    /// The best estimate is exactly 0: the groups differ by no more than the spread within them would make them. That
    /// does not show that they are equal, only that these data cannot tell a difference.
    /// </summary>
    public sealed record NoneSeen : BetweenSpread
    {
        internal NoneSeen()
        {
        }

        /// <inheritdoc/>
        public override double StandardDeviation => 0;

        /// <summary>The same in a sentence.</summary>
        public string Reason { get; } = "the groups differ by no more than the spread within them explains";
    }

    /// <summary>There is one group, so nothing to compare it with; the spread counts as 0, which it need not be.</summary>
    public sealed record OneGroup : BetweenSpread
    {
        internal OneGroup()
        {
        }

        /// <inheritdoc/>
        public override double StandardDeviation => 0;

        /// <summary>The same in a sentence.</summary>
        public string Reason { get; } = "one group cannot show how groups differ";
    }

    internal static BetweenSpread OfVariance(double variance) =>
        variance > 0 ? new Found(Math.Sqrt(variance)) : new NoneSeen();
}
