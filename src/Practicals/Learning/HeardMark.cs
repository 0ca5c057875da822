namespace Calx.Practicals.Learning;

/// <summary>Something that was heard of a group at a minute of its lesson. A closed set.</summary>
public abstract record HeardMark
{
    private HeardMark(double minute)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(double.IsFinite(minute), true, nameof(minute));
        Minute = minute;
    }

    /// <summary>When, in min since the lesson began.</summary>
    public double Minute { get; }

    /// <summary>It came to a step.</summary>
    public sealed record CameTo : HeardMark
    {
        /// <summary>Takes what was heard.</summary>
        /// <param name="minute">When.</param>
        /// <param name="step">Id of the step.</param>
        public CameTo(double minute, string step)
            : base(minute) => Step = step;

        /// <summary>Id of the step.</summary>
        public string Step { get; }
    }

    /// <summary>It took a reading.</summary>
    public sealed record Read : HeardMark
    {
        /// <summary>Takes what was heard.</summary>
        /// <param name="minute">When.</param>
        /// <param name="weighing">Id of the weighing, such as <c>after2</c>.</param>
        /// <param name="balance">Letter of the balance, or null where it is not known.</param>
        public Read(double minute, string weighing, string? balance)
            : base(minute) => (Weighing, Balance) = (weighing, balance);

        /// <summary>Id of the weighing.</summary>
        public string Weighing { get; }

        /// <summary>Letter of the balance, or null.</summary>
        public string? Balance { get; }
    }

    /// <summary>Its flame was lit.</summary>
    public sealed record FlameLit : HeardMark
    {
        /// <summary>Takes what was heard.</summary>
        public FlameLit(double minute)
            : base(minute)
        {
        }
    }

    /// <summary>Its flame was put out.</summary>
    public sealed record FlameOut : HeardMark
    {
        /// <summary>Takes what was heard.</summary>
        public FlameOut(double minute)
            : base(minute)
        {
        }
    }
}
