using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;

namespace Calx.Practicals.Findings;

/// <summary>One quantity pooled over the groups of a class.</summary>
public sealed class ClassQuantity
{
    internal ClassQuantity(QuantityDefinition quantity, Pool pool, Pool? withAll, double median)
    {
        Quantity = quantity;
        Value = pool.Value;
        StandardUncertainty = pool.StandardUncertainty;
        Interval = pool.Interval;
        Within = pool.Within;
        WithinIsFromTrials = pool.FromTrials;
        Between = pool.Between;
        Count = pool.Count;
        DegreesOfFreedom = pool.DegreesOfFreedom;
        Median = median;
        Common = pool.Common;
        AsClass = pool.AsClass ?? (pool.StandardUncertainty, pool.DegreesOfFreedom);
        WithAllGroups = withAll is null ? null : new PooledValue(withAll.Value, withAll.StandardUncertainty, withAll.Interval, withAll.Count);
    }

    /// <summary>The quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>Pooled over the groups that are not set aside, in the quantity's unit.</summary>
    public double Value { get; }

    /// <summary>Standard uncertainty of <see cref="Value"/>: chance, and what the file says that all groups share; any other bias of all
    /// groups is not in it.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The part of <see cref="StandardUncertainty"/> that all groups share and more groups would not lessen.</summary>
    internal CommonPart Common { get; }

    /// <summary>The same as a number in the quantity's unit; 0 where the groups share nothing.</summary>
    public double CommonStandardUncertainty => Common.StandardUncertainty;

    /// <summary>95 % interval from Student's t with <see cref="DegreesOfFreedom"/>; of a single group the group's own.</summary>
    public CoverageInterval Interval { get; }

    /// <summary>Median of all groups that have the quantity, none set aside.</summary>
    public double Median { get; }

    /// <summary>Standard deviation within a group: of its trials where there are several, else what the balance allows.</summary>
    public double Within { get; }

    /// <summary>Whether <see cref="Within"/> was seen in trials; otherwise it is what the balance allows.</summary>
    public bool WithinIsFromTrials { get; }

    /// <summary>Standard deviation between groups beyond that.</summary>
    public double Between { get; }

    /// <summary>Groups pooled.</summary>
    public int Count { get; }

    /// <summary>Degrees of freedom of the standard uncertainty, not a whole number where the spread between groups was expected; +∞ for
    /// one group.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>Standard uncertainty and degrees of freedom with which the value is held against equations: those above, but that one
    /// group alone counts with how much groups of the practical differ, too.</summary>
    internal (double StandardUncertainty, double DegreesOfFreedom) AsClass { get; }

    /// <summary>The same with the groups that were set aside; null where none was.</summary>
    public PooledValue? WithAllGroups { get; }

    /// <summary>Value and standard uncertainty as shown to a person, without the unit.</summary>
    public string Text => Figures.WithUncertainty(Value, StandardUncertainty);

    /// <summary>What pooling found, before it is given its quantity.</summary>
    internal sealed record Pool(
        double Value, double StandardUncertainty, double Within, double Between, int Count, double DegreesOfFreedom, bool FromTrials)
    {
        /// <summary>The interval of the one result that there is: a group has one, and not another as a class. Null where there are several.</summary>
        public CoverageInterval? Own { get; init; }

        /// <summary>Standard uncertainty, and its degrees of freedom, as a statement about what groups find: a single group's own says
        /// nothing of how others differ. Null where it is the same.</summary>
        public (double StandardUncertainty, double DegreesOfFreedom)? AsClass { get; init; }

        /// <summary>What all groups share; <see cref="StandardUncertainty"/> and <see cref="AsClass"/> have it in them.</summary>
        public CommonPart Common { get; private init; } = CommonPart.None;

        /// <summary>The same with what all groups share put in.</summary>
        public Pool With(CommonPart common)
        {
            (double u, double degrees) = common.With(StandardUncertainty, DegreesOfFreedom);
            double half = StandardNormal.Quantile(0.975) * common.StandardUncertainty;
            return this with
            {
                StandardUncertainty = u,
                DegreesOfFreedom = degrees,
                AsClass = AsClass is (double alone, double few) ? common.With(alone, few) : null,
                // A group's own interval need not be even: each side is widened by itself.
                Own = Own is CoverageInterval own
                    ? new CoverageInterval(Value - Widened(Value - own.Low), Value + Widened(own.High - Value), own.Coverage) : null,
                Common = common,
            };

            double Widened(double side) => Math.Sqrt((side * side) + (half * half));
        }

        public CoverageInterval Interval
        {
            get
            {
                if (Own is CoverageInterval own)
                {
                    return own;
                }

                double half = StudentT.Quantile(0.975, DegreesOfFreedom) * StandardUncertainty;
                return new CoverageInterval(Value - half, Value + half, 0.95);
            }
        }
    }
}

/// <summary>A pooled value.</summary>
public sealed class PooledValue
{
    internal PooledValue(double value, double standardUncertainty, CoverageInterval interval, int count)
    {
        Value = value;
        StandardUncertainty = standardUncertainty;
        Interval = interval;
        Count = count;
    }

    /// <summary>In the quantity's unit.</summary>
    public double Value { get; }

    /// <summary>Its standard uncertainty.</summary>
    public double StandardUncertainty { get; }

    /// <summary>95 % interval.</summary>
    public CoverageInterval Interval { get; }

    /// <summary>Groups pooled.</summary>
    public int Count { get; }
}
