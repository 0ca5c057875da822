using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Model;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>The change of mass against the mass of the sample, group by group. A closed set.</summary>
public abstract record ProductLine
{
    private ProductLine()
    {
    }

    /// <summary>No line, and why.</summary>
    public sealed record None : ProductLine
    {
        internal None(string reason) => Reason = reason;

        /// <summary>Why, in one sentence.</summary>
        public string Reason { get; }
    }

    /// <summary>The line through the groups that are not set aside, uncertain in both directions.</summary>
    public sealed record Fitted : ProductLine
    {
        internal Fitted(
            QuantityDefinition x, QuantityDefinition y, YorkLine throughOrigin, YorkLine? free, double theorySlope)
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
        public YorkLine ThroughOrigin { get; }

        /// <summary>With an intercept; null with fewer than three groups, or where their samples are too alike.</summary>
        public YorkLine? Free { get; }

        /// <summary>The slope that the equation gives: the whole change of 1 g of sample.</summary>
        public double TheorySlope { get; }
    }

    /// <summary>Beyond it sample and change are one number: what burns is what is missing.</summary>
    private const double MostCorrelated = 0.999999;

    /// <summary>Fits the line to a class.</summary>
    internal static ProductLine Of(Practical practical, IdealRun ideal, IReadOnlyList<GroupFindings> groups, EngineLanguage language)
    {
        QuantityDefinition x = practical.Quantities.First(q => q.Id == practical.Findings.Sample);
        QuantityDefinition y = practical.Quantities.First(q => q.Id == practical.Findings.Change);
        if (groups.Select(g => Correlation(g.Find(x.Id), g.Find(y.Id))).Any(c => Math.Abs(c) > MostCorrelated))
        {
            return new None(new ConclusionTexts(language).LineOfOneNumber(x.Label, y.Label));
        }

        UncertainPoint[] points =
        [
            .. groups.Where(g => !g.IsSetAside(x.Id) && !g.IsSetAside(y.Id))
                .Select(g => PointOf(g.Find(x.Id), g.Find(y.Id))).OfType<UncertainPoint>(),
        ];
        if (points.Length < 2)
        {
            return new None(new ConclusionTexts(language).LineNeedsTwo(x.Label, y.Label));
        }

        return StraightLine.ThroughOriginWithErrorsInBoth(points) switch
        {
            YorkResult.Fitted through => new Fitted(
                x, y, through.Fit, points.Length < 3 ? null : (StraightLine.WithErrorsInBoth(points) as YorkResult.Fitted)?.Fit, ideal.ChangeOfOneGram),
            YorkResult.NotFitted not => new None(new ConclusionTexts(language).NoLine(not.Reason)),
            _ => throw new InvalidOperationException("No other case of a fitted line exists."),
        };
    }

    private static UncertainPoint? PointOf(QuantityEstimate? x, QuantityEstimate? y)
    {
        if (x is null || y is null || !(y.StandardUncertainty > 0))
        {
            return null;
        }

        return new UncertainPoint(x.Value, x.StandardUncertainty, y.Value, y.StandardUncertainty, Correlation(x, y));
    }

    private static double Correlation(QuantityEstimate? x, QuantityEstimate? y) =>
        x?.StandardUncertainty > 0 && y?.StandardUncertainty > 0 ? SharedReadings.Covariance(x, y) / (x.StandardUncertainty * y.StandardUncertainty) : 0;
}
