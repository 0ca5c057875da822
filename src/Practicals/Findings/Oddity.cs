namespace Calx.Practicals.Findings;

/// <summary>Whether a group's result lies apart from the class. A closed set.</summary>
public abstract record Oddity
{
    private Oddity(string reason) => Reason = reason;

    /// <summary>The numbers that say so, in one sentence for the teacher.</summary>
    public string Reason { get; }

    /// <summary>Nothing stands out.</summary>
    public sealed record Ordinary : Oddity
    {
        internal Ordinary(string reason)
            : base(reason)
        {
        }
    }

    /// <summary>A result to look into: outside the class's scatter, or impossible.</summary>
    public sealed record Odd : Oddity
    {
        private readonly string[] setAside;

        internal Odd(string reason, string[] quantities, string[] setAside)
            : base(reason) => (Quantities, this.setAside) = (quantities, setAside);

        /// <summary>Ids of the quantities in which it stands out, or that cannot be.</summary>
        public IReadOnlyList<string> Quantities { get; }

        /// <summary>Whether the class's value of a quantity is pooled without this group: it rests on a reading that is in doubt.</summary>
        public bool SetsAside(string quantityId) => setAside.Contains(quantityId);
    }

    /// <summary>It cannot be said: the quantity is missing, or the groups are too few.</summary>
    public sealed record Unjudged : Oddity
    {
        internal Unjudged(string reason)
            : base(reason)
        {
        }
    }
}
