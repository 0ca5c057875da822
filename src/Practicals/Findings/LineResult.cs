using Calx.Practicals.Definition;

namespace Calx.Practicals.Findings;

/// <summary>The change of mass against the mass of the sample, group by group. A closed set.</summary>
public abstract record LineResult
{
    private LineResult()
    {
    }

    /// <summary>No line, and why.</summary>
    public sealed record None : LineResult
    {
        internal None(string reason) => Reason = reason;

        /// <summary>Why, in one sentence.</summary>
        public string Reason { get; }
    }

    /// <summary>The line through the groups that are not set aside.</summary>
    public sealed record Fitted : LineResult
    {
        internal Fitted(
            QuantityDefinition x, QuantityDefinition y, FittedLine throughOrigin, FittedLine? free, double theorySlope)
        {
            X = x;
            Y = y;
            ThroughOrigin = throughOrigin;
            Free = free;
            TheorySlope = theorySlope;
        }

        /// <summary>The sample's mass.</summary>
        public QuantityDefinition X { get; }

        /// <summary>The change of mass.</summary>
        public QuantityDefinition Y { get; }

        /// <summary>Through the origin: no sample, no change.</summary>
        public FittedLine ThroughOrigin { get; }

        /// <summary>With an intercept; null with fewer than three groups or where all samples are alike.</summary>
        public FittedLine? Free { get; }

        /// <summary>The slope that the equation gives.</summary>
        public double TheorySlope { get; }
    }
}

/// <summary>A straight line with its uncertainty, allowing for errors in both directions.</summary>
public sealed class FittedLine
{
    internal FittedLine(
        double slope, double slopeUncertainty, double intercept, double interceptUncertainty, double scatter, int count)
    {
        Slope = slope;
        SlopeUncertainty = slopeUncertainty;
        Intercept = intercept;
        InterceptUncertainty = interceptUncertainty;
        Scatter = scatter;
        Count = count;
    }

    /// <summary>Change for 1 g of sample.</summary>
    public double Slope { get; }

    /// <summary>Its standard uncertainty, widened by <see cref="Scatter"/> where that is above 1.</summary>
    public double SlopeUncertainty { get; }

    /// <summary>Change for no sample, in g; 0 for a line through the origin.</summary>
    public double Intercept { get; }

    /// <summary>Its standard uncertainty; 0 for a line through the origin.</summary>
    public double InterceptUncertainty { get; }

    /// <summary>√(χ²/ν): 1 where the points scatter as the balance explains, more where groups differ beyond it.</summary>
    public double Scatter { get; }

    /// <summary>Points.</summary>
    public int Count { get; }
}
