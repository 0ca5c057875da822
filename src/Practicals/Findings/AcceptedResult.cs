using Calx.Practicals.Definition;

namespace Calx.Practicals.Findings;

/// <summary>The class's key quantity against its accepted value. A closed set.</summary>
public abstract record AcceptedResult
{
    private AcceptedResult()
    {
    }

    /// <summary>No comparison, and why.</summary>
    public sealed record None : AcceptedResult
    {
        internal None(string reason) => Reason = reason;

        /// <summary>Why, in one sentence.</summary>
        public string Reason { get; }
    }

    /// <summary>The comparison.</summary>
    public sealed record Compared : AcceptedResult
    {
        internal Compared(
            ClassQuantity value, double accepted, double distance, double p, IReadOnlyList<FaultDefinition> causesThatPull)
        {
            Value = value;
            Accepted = accepted;
            Distance = distance;
            P = p;
            CausesThatPull = causesThatPull;
        }

        /// <summary>The class's value.</summary>
        public ClassQuantity Value { get; }

        /// <summary>The accepted value: the practical's model with the reaction complete and nothing going wrong.</summary>
        public double Accepted { get; }

        /// <summary>(value − accepted) over the standard uncertainty.</summary>
        public double Distance { get; }

        /// <summary>Two-sided probability of so large a distance by chance.</summary>
        public double P { get; }

        /// <summary>Whether the distance is more than chance explains at 5 %.</summary>
        public bool IsBiased => P < 0.05;

        /// <summary>Causes of the practical that move the result in the direction found, likeliest first; empty where the
        /// distance is within chance.</summary>
        public IReadOnlyList<FaultDefinition> CausesThatPull { get; }
    }
}
