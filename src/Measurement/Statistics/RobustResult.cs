namespace Calx.Measurement.Statistics;

/// <summary>A centre and a scale that a few wild values hardly move, or why there is no scale.</summary>
public abstract record RobustResult
{
    private RobustResult(double centre) => Centre = centre;

    /// <summary>The robust centre, in the unit of the values.</summary>
    public double Centre { get; }

    /// <summary>Both centre and scale were found.</summary>
    public sealed record Estimated : RobustResult
    {
        internal Estimated(double centre, double scale, int count, int steps)
            : base(centre)
        {
            Scale = scale;
            Count = count;
            Steps = steps;
        }

        /// <summary>The robust standard deviation, above 0, in the unit of the values.</summary>
        public double Scale { get; }

        /// <summary>How many values there were.</summary>
        public int Count { get; }

        /// <summary>How many times the values were drawn in before nothing moved any more.</summary>
        public int Steps { get; }

        /// <summary>
        /// The standard uncertainty of <see cref="Centre"/>, 1.25 times scale over √n (ISO 13528:2015, 7.7.3): 1.25 is what a
        /// median would lose on normal data, a little more than this centre does.
        /// </summary>
        public double StandardUncertainty => 1.25 * Scale / Math.Sqrt(Count);
    }

    /// <summary>So many values are equal that the others count as wild and no spread is left.</summary>
    public sealed record NoScale : RobustResult
    {
        internal NoScale(double centre, string reason)
            : base(centre) => Reason = reason;

        /// <summary>Why, in a plain clause.</summary>
        public string Reason { get; }
    }
}
