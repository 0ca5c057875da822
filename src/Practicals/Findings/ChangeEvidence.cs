namespace Calx.Practicals.Findings;

/// <summary>Whether the mass rose, fell or stayed over the class. A closed set.</summary>
public abstract record ChangeEvidence
{
    private ChangeEvidence(string sentence) => Sentence = sentence;

    /// <summary>The finding in one sentence, with its numbers.</summary>
    public string Sentence { get; }

    /// <summary>The groups show a direction (or do not), by exact tests over groups.</summary>
    public sealed record Direction : ChangeEvidence
    {
        internal Direction(int rose, int fell, double signTestP, double permutationP, bool shown, string sentence)
            : base(sentence)
        {
            Rose = rose;
            Fell = fell;
            SignTestP = signTestP;
            PermutationP = permutationP;
            Shown = shown;
        }

        /// <summary>Groups in which the mass rose.</summary>
        public int Rose { get; }

        /// <summary>Groups in which it fell.</summary>
        public int Fell { get; }

        /// <summary>Two-sided probability of so uneven a split by chance.</summary>
        public double SignTestP { get; }

        /// <summary>Two-sided probability of so large a mean change if each sign were a toss of a coin.</summary>
        public double PermutationP { get; }

        /// <summary>Whether the expected direction is shown at 5 %.</summary>
        public bool Shown { get; }
    }

    /// <summary>The practical expects no change: whether one larger than the band can be excluded.</summary>
    public sealed record Sameness : ChangeEvidence
    {
        internal Sameness(double bandInGrams, double p, bool shown, string sentence)
            : base(sentence)
        {
            BandInGrams = bandInGrams;
            P = p;
            Shown = shown;
        }

        /// <summary>Largest change that counts as none, in g.</summary>
        public double BandInGrams { get; }

        /// <summary>The larger of the two one-sided probabilities.</summary>
        public double P { get; }

        /// <summary>Whether a larger change is excluded at 5 %.</summary>
        public bool Shown { get; }
    }

    /// <summary>Too little to judge, and why.</summary>
    public sealed record Unjudged : ChangeEvidence
    {
        internal Unjudged(string sentence)
            : base(sentence)
        {
        }
    }
}
