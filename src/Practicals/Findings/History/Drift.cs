using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Findings.History;

/// <summary>Whether a value has moved over time by more than chance explains. A closed set.</summary>
public abstract record Drift
{
    private Drift()
    {
    }

    /// <summary>Too little to judge.</summary>
    public sealed record Unjudged : Drift
    {
        internal Unjudged(string reason) => Reason = reason;

        /// <summary>Why, in one sentence.</summary>
        public string Reason { get; }
    }

    /// <summary>A straight line through the values, each weighted by its uncertainty (docs/methods/history.md).</summary>
    public sealed record Judged : Drift
    {
        private readonly DateOnly from;
        private readonly double atStart;
        private readonly double daysOfUnit;

        internal Judged(DateOnly from, double atStart, double slope, CoverageInterval interval, DriftUnit unit)
        {
            this.from = from;
            this.atStart = atStart;
            Slope = slope;
            Interval = interval;
            (Per, daysOfUnit) = (unit.Name, unit.Days);
        }

        /// <summary>The change in a unit of time.</summary>
        public double Slope { get; }

        /// <summary>95 % interval of <see cref="Slope"/> by Student's t; wider where the values scatter more than their
        /// uncertainties say, never narrower.</summary>
        public CoverageInterval Interval { get; }

        /// <summary>The unit of time: <c>year</c>, or <c>month</c> of 30 days where the values span less than a year.</summary>
        public string Per { get; }

        /// <summary>Whether that is a year.</summary>
        internal bool IsByYear => Per == DriftUnit.Year.Name;

        /// <summary>Whether the interval leaves no change out.</summary>
        public bool IsBeyondChance => !Interval.Contains(0);

        /// <summary>The line's value on a day.</summary>
        public double ValueOn(DateOnly day) => atStart + (Slope * (day.DayNumber - from.DayNumber) / daysOfUnit);
    }
}

/// <summary>A unit in which a change is told.</summary>
/// <param name="Name">For people.</param>
/// <param name="Days">Its length.</param>
internal sealed record DriftUnit(string Name, double Days)
{
    /// <summary>A year of the calendar, on average.</summary>
    public static DriftUnit Year { get; } = new("year", 365.25);

    /// <summary>A month of a school.</summary>
    public static DriftUnit Month { get; } = new("month", 30);
}
