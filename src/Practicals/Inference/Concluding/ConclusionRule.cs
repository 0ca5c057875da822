using Calx.Chemistry.Elements;
using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>
/// Whether readings bear a conclusion out: of one group, and of a whole class (docs/methods/conclusions.md). The two are told
/// apart on purpose: what one group cannot say, twelve together often can, and twelve can be wrong together.
/// </summary>
internal sealed class ConclusionRule
{
    /// <summary>Two-sided 95 % point of the normal law.</summary>
    public static readonly double Normal95 = StandardNormal.Quantile(0.975);

    private const double UsualDivisions = 2;

    private readonly double divisions;
    private readonly double[] candidates;
    private readonly int right;
    private readonly double accepted;

    private ConclusionRule(
        Practical practical, ConclusionDefinition conclusion, ConclusionTest test, AtomicWeights weights)
    {
        Conclusion = conclusion;
        Test = test;
        Lines = new QuantityLines(practical, practical.Quantities.First(q => q.Id == test.Quantity), weights);
        divisions = practical.Findings.ConstantMass?.ToleranceInDivisions ?? UsualDivisions;
        candidates = test is ConclusionTest.Chooses chooses
            ? [.. (chooses.Among.Count > 0 ? chooses.Among : practical.Findings.Alternatives.Select(a => a.ExpectedFraction(weights).Value)).Order()]
            : [];
        if (IsOfNumber)
        {
            var ideal = new IdealRun(practical, weights);
            ExpectedBetween = ideal.SpreadOf(test.Quantity);
            Common = new CommonPart(ideal.SharedIn(test.Quantity, new Circumstances(practical)));
            accepted = ideal.Accepted(test.Quantity);
            right = NearestNumber.Of(candidates, accepted);
        }
    }

    /// <summary>The conclusion.</summary>
    public ConclusionDefinition Conclusion { get; }

    /// <summary>What it says.</summary>
    public ConclusionTest Test { get; }

    /// <summary>The quantity that it says it of.</summary>
    public QuantityLines Lines { get; }

    /// <summary>Whether it is about a number that the groups of a class pool, not about which way something goes.</summary>
    public bool IsOfNumber => Test is ConclusionTest.Chooses or ConclusionTest.Within or ConclusionTest.Known;

    /// <summary>How much groups of the practical differ in the number that is pooled; 0 for other tests.</summary>
    public double ExpectedBetween { get; }

    /// <summary>What all groups of a class share in the number that is pooled.</summary>
    public CommonPart Common { get; } = CommonPart.None;

    /// <summary>How far to either side of 0 counts as no change, in g.</summary>
    /// <param name="divisionInGrams">The step of the balance.</param>
    public double BandInGrams(double divisionInGrams) =>
        Test is ConclusionTest.Stays stays ? stays.BandInGrams(divisions, divisionInGrams) : divisions * divisionInGrams;

    /// <summary>Prepares the conclusions of a practical that readings can decide.</summary>
    public static IReadOnlyList<ConclusionRule> All(Practical practical, AtomicWeights weights) =>
        [.. practical.Conclusions.Where(c => c.Test is not null).Select(c => new ConclusionRule(practical, c, c.Test!, weights))];

    /// <summary>What one group's readings say.</summary>
    /// <param name="last">The last weighing of each reading, by its place in the practical's list, in g.</param>
    /// <param name="u">Standard uncertainty of one weighing, in g.</param>
    /// <param name="divisionInGrams">The step of the group's balance.</param>
    public Bearing OfGroup(ReadOnlySpan<double> last, double u, double divisionInGrams)
    {
        MeasuredValue value = Lines.Of(last, u);
        if (!value.IsFound)
        {
            return Bearing.Open;
        }

        // A millionth of a division lets two whole divisions be two, whatever binary fractions make of them.
        double least = (divisions + 1e-6) * divisionInGrams;
        switch (Test)
        {
            case ConclusionTest.Moves moves:
                return Math.Abs(value.Value) <= least ? Bearing.Open : value.Value > 0 == moves.Up ? Bearing.Right : Bearing.Wrong;
            case ConclusionTest.Stays:
                return Math.Abs(value.Value) <= BandInGrams(divisionInGrams) + (1e-6 * divisionInGrams) ? Bearing.Right : Bearing.Wrong;
            case ConclusionTest.Within within:
                double edge = Math.Clamp(value.Value, accepted * (1 - within.Share), accepted * (1 + within.Share));
                return edge == value.Value ? Bearing.Right
                    : Math.Abs(Lines.DistanceFrom(edge, last, u)) > Normal95 ? Bearing.Wrong : Bearing.Open;
            case ConclusionTest.Known known:
                return IsKnown(value.Value, Normal95 * value.StandardUncertainty, known);
            default:
                return Chosen(value.Value, new GroupDistance(Lines, last, u));
        }
    }

    /// <summary>What a class says of a number that its groups have pooled.</summary>
    /// <param name="pooled">The pooled value and its uncertainty.</param>
    /// <param name="coverageFactor">How many standard uncertainties a 95 % interval reaches to either side.</param>
    public Bearing OfPooled(MeasuredValue pooled, double coverageFactor)
    {
        if (!pooled.IsFound)
        {
            return Bearing.Open;
        }

        double reach = coverageFactor * pooled.StandardUncertainty;
        if (Test is ConclusionTest.Within within)
        {
            double edge = Math.Clamp(pooled.Value, accepted * (1 - within.Share), accepted * (1 + within.Share));
            return edge == pooled.Value ? Bearing.Right : Math.Abs(pooled.Value - edge) > reach ? Bearing.Wrong : Bearing.Open;
        }

        if (Test is ConclusionTest.Known known)
        {
            return IsKnown(pooled.Value, reach, known);
        }

        if (!(pooled.Value > 0))
        {
            return Bearing.Open;
        }

        int nearest = NearestNumber.Of(candidates, pooled.Value);
        for (int i = 0; i < candidates.Length; i++)
        {
            if (i != nearest && Math.Abs(pooled.Value - candidates[i]) <= reach)
            {
                return Bearing.Open;
            }
        }

        return nearest == right ? Bearing.Right : Bearing.Wrong;
    }

    private static Bearing IsKnown(double value, double reach, ConclusionTest.Known known) =>
        reach <= known.Share * Math.Abs(value) ? Bearing.Right : Bearing.Open;

    /// <summary>The nearest of the numbers, by their ratio, once every other is excluded.</summary>
    private Bearing Chosen(double value, GroupDistance distance)
    {
        if (!(value > 0))
        {
            return Bearing.Open;
        }

        int nearest = NearestNumber.Of(candidates, value);
        for (int i = 0; i < candidates.Length; i++)
        {
            if (i != nearest && !(Math.Abs(distance.From(candidates[i])) > Normal95))
            {
                return Bearing.Open;
            }
        }

        return nearest == right ? Bearing.Right : Bearing.Wrong;
    }

    /// <summary>How far one group's readings lie from giving a number.</summary>
    private readonly ref struct GroupDistance(QuantityLines lines, ReadOnlySpan<double> last, double u)
    {
        private readonly ReadOnlySpan<double> last = last;

        public double From(double value) => lines.DistanceFrom(value, last, u);
    }
}
