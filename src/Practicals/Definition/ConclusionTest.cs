namespace Calx.Practicals.Definition;

/// <summary>What a conclusion says of a quantity, so that readings can bear it out or not. A closed set.</summary>
public abstract record ConclusionTest
{
    private ConclusionTest(string quantity) => Quantity = quantity;

    /// <summary>Id of the quantity.</summary>
    public string Quantity { get; }

    /// <summary>It goes one way.</summary>
    public sealed record Moves : ConclusionTest
    {
        internal Moves(string quantity, bool up)
            : base(quantity) => Up = up;

        /// <summary>Whether it is above 0.</summary>
        public bool Up { get; }
    }

    /// <summary>It stays 0 within the practical's divisions of the balance, or within so many grams where that is more.</summary>
    public sealed record Stays : ConclusionTest
    {
        internal Stays(string quantity, double withinInGrams)
            : base(quantity) => WithinInGrams = withinInGrams;

        /// <summary>The least band to either side, in g; 0 where only the divisions count.</summary>
        public double WithinInGrams { get; }

        /// <summary>The band to either side, in g.</summary>
        /// <param name="divisions">The practical's divisions.</param>
        /// <param name="divisionInGrams">The step of the balance.</param>
        public double BandInGrams(double divisions, double divisionInGrams) => Math.Max(divisions * divisionInGrams, WithinInGrams);
    }

    /// <summary>It is one of several numbers, the accepted one, and none of the others.</summary>
    public sealed record Chooses : ConclusionTest
    {
        internal Chooses(string quantity, IReadOnlyList<double> among)
            : base(quantity) => Among = among;

        /// <summary>The numbers, two or more, above 0, rising; empty takes the findings' alternatives.</summary>
        public IReadOnlyList<double> Among { get; }
    }

    /// <summary>It is the accepted value within a share of it.</summary>
    public sealed record Within : ConclusionTest
    {
        internal Within(string quantity, double share)
            : base(quantity) => Share = share;

        /// <summary>The share, above 0 up to 1.</summary>
        public double Share { get; }
    }

    /// <summary>Its 95 % interval reaches no further to either side than a share of the value: for what has no accepted value.</summary>
    public sealed record Known : ConclusionTest
    {
        internal Known(string quantity, double share)
            : base(quantity) => Share = share;

        /// <summary>The share, above 0 up to 1.</summary>
        public double Share { get; }
    }
}
