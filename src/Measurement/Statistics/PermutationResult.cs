namespace Calx.Measurement.Statistics;

/// <summary>
/// How often a mean so far from nothing comes up when the labels mean nothing, counted over all rearrangements of the data
/// at hand or over a sample of them.
/// </summary>
public abstract record PermutationResult
{
    private PermutationResult()
    {
    }

    /// <summary>Every rearrangement was counted.</summary>
    public sealed record Exact : PermutationResult
    {
        internal Exact(PermutationTails tails) => Tails = tails;

        /// <summary>The chances; exact but for rounding in the last digits.</summary>
        public PermutationTails Tails { get; }
    }

    /// <summary>There are too many rearrangements to count, so a seeded sample was drawn.</summary>
    public sealed record Sampled : PermutationResult
    {
        internal Sampled(PermutationTails tails, int draws)
        {
            Tails = tails;
            Draws = draws;
        }

        /// <summary>
        /// The chances, the data as observed counted among the draws, so that none is 0 (Phipson and Smyth, Stat. Appl.
        /// Genet. Mol. Biol. 9 (2010) 39).
        /// </summary>
        public PermutationTails Tails { get; }

        /// <summary>How many rearrangements were drawn; a chance p is known to about √(p(1-p)/draws).</summary>
        public int Draws { get; }
    }

    /// <summary>The data allow no test.</summary>
    public sealed record NotTested : PermutationResult
    {
        internal NotTested(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}

/// <summary>The chances of a permutation test.</summary>
public sealed class PermutationTails
{
    internal PermutationTails(double upper, double lower, double twoSided)
    {
        Upper = Math.Min(1, upper);
        Lower = Math.Min(1, lower);
        TwoSided = Math.Min(1, twoSided);
    }

    /// <summary>The chance of a mean, or difference of means, as large as observed or larger.</summary>
    public double Upper { get; }

    /// <summary>The chance of one as small or smaller.</summary>
    public double Lower { get; }

    /// <summary>The chance of one as far from its centre or farther, either way.</summary>
    public double TwoSided { get; }
}
