namespace Calx.Practicals.Inference.Deciding;

/// <summary>What would tell a group's causes apart best. A closed set.</summary>
public abstract record NextStep
{
    private NextStep(string why) => Why = why;

    /// <summary>The reason, one sentence for the teacher.</summary>
    public string Why { get; }

    /// <summary>Something to do.</summary>
    public sealed record Do : NextStep
    {
        /// <summary>Takes the action with what it is expected to tell.</summary>
        /// <param name="action">Id of the practical's action.</param>
        /// <param name="label">What to do, for people: an imperative clause.</param>
        /// <param name="minutes">How long it takes, above 0.</param>
        /// <param name="informationBits">By how much it is expected to lessen the entropy of the cause, in bits, 0 or
        /// more.</param>
        /// <param name="why">The reason, one sentence for the teacher.</param>
        public Do(string action, string label, double minutes, double informationBits, string why)
            : base(why)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(action);
            ArgumentOutOfRangeException.ThrowIfNegative(informationBits);
            Action = action;
            Label = label;
            Minutes = minutes;
            InformationBits = informationBits;
        }

        /// <summary>Id of the practical's action.</summary>
        public string Action { get; }

        /// <summary>What to do, for people.</summary>
        public string Label { get; }

        /// <summary>How long it takes.</summary>
        public double Minutes { get; }

        /// <summary>By how much it is expected to lessen the entropy of the cause, in bits.</summary>
        public double InformationBits { get; }
    }

    /// <summary>Nothing that the practical allows would tell more.</summary>
    public sealed record None : NextStep
    {
        /// <summary>Takes the reason.</summary>
        /// <param name="why">The reason, one sentence for the teacher.</param>
        public None(string why)
            : base(why)
        {
        }
    }
}
