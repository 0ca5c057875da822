using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Model;

namespace Calx.Practicals.Marking.Judging;

/// <summary>What judgements on one practical are held against: the values of a perfect run, and which way each cause moves them.</summary>
internal sealed class JudgingFacts
{
    private const double UsualDivisions = 2;
    private const double UsualShare = 0.05;

    private readonly Func<string, double> molarMass;

    public JudgingFacts(Practical practical, AtomicWeights weights)
    {
        Practical = practical;
        molarMass = new MolarMasses(weights).Of;
        Ideal = new IdealRun(practical, weights);
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>The run in which all reacts and nothing goes wrong.</summary>
    public IdealRun Ideal { get; }

    /// <summary>The accepted value of an answer.</summary>
    public double Accepted(AskedValue value) => ValueOf(value, Ideal.Masses.Last);

    /// <summary>+1 where a cause makes the value larger, -1 where smaller, 0 where it can do either.</summary>
    public int DirectionOf(FaultDefinition fault, AskedValue value) => Ideal.DirectionOf(fault, readings => ValueOf(value, readings));

    /// <summary>A quantity of the practical from a student's readings, or not a number.</summary>
    public double Quantity(string id, OwnNumbers own) =>
        Number(Practical.Quantities.First(q => q.Id == id).Formula, own.Reading);

    /// <summary>The same with one reading moved by so much.</summary>
    public double Quantity(string id, OwnNumbers own, string moved, double by) =>
        Number(Practical.Quantities.First(q => q.Id == id).Formula, name => own.Reading(name) + (name == moved ? by : 0));

    /// <summary>How far the readings lie from those of a perfect run with the same sample, in g; not a number where they do not tell.</summary>
    public double KeyDifference(Func<string, double> reading)
    {
        FindingsDefinition findings = Practical.Findings;
        double Of(string id) => Number(Practical.Quantities.First(q => q.Id == id).Formula, reading);
        return findings.AsExpected is AsExpectedDefinition rule
            ? Number(rule.Difference, reading)
            : Of(findings.Change) - (Ideal.ChangeOfOneGram * Of(findings.Sample));
    }

    /// <summary>Whether the readings are as expected: nearer to the perfect run than so many divisions or such a share of the change that is due,
    /// whichever is larger. Null where they do not tell.</summary>
    public bool? IsAsExpected(OwnNumbers own)
    {
        FindingsDefinition findings = Practical.Findings;
        double difference = KeyDifference(own.Reading), sample = Quantity(findings.Sample, own);
        if (!double.IsFinite(difference) || !double.IsFinite(sample))
        {
            return null;
        }

        double divisions = (findings.AsExpected?.Divisions ?? UsualDivisions) * Math.Pow(10, -own.Decimals);
        double share = (findings.AsExpected?.Share ?? UsualShare) * Math.Abs(Ideal.ChangeOfOneGram * sample);
        return Math.Abs(difference) <= Math.Max(divisions, share) * (1 + 1e-9);
    }

    /// <summary>The weighing at the end: the repeated one, or the last that the key difference rests on.</summary>
    public string LastReading => Practical.Findings.ConstantMass?.Reading
        ?? Practical.Readings.Last(r => KeyDifference(name => name == r.Id ? 1 : 0) != KeyDifference(_ => 0)).Id;

    /// <summary>How much groups with such a sample differ in the key difference by what goes wrong in them, a standard deviation in g.</summary>
    public double SpreadOfKeyDifference(OwnNumbers own)
    {
        double scale = Quantity(Practical.Findings.Sample, own) / Ideal.Accepted(Practical.Findings.Sample);
        return Math.Abs(scale) * Ideal.SpreadOf(KeyDifference);
    }

    /// <summary>One division of the balance; of another instrument what scatters as much for it as a division does for a balance.</summary>
    public static double DivisionOf(ReadingDefinition reading, double division) =>
        reading.Errors is InstrumentErrors errors ? Math.Sqrt(errors.ReadingVariance(errors.Step.Grams)) / OddGroupsOfClass.ReadingInDivisions : division;

    /// <summary>How much the balance alone scatters it, in g.</summary>
    /// <param name="own">The readings.</param>
    /// <param name="division">One division, in g.</param>
    public double BalanceSpreadOfKeyDifference(OwnNumbers own, double division)
    {
        double here = KeyDifference(own.Reading);
        return Math.Sqrt(Practical.Readings.Sum(r => KeyDifference(name => own.Reading(name) + (name == r.Id ? DivisionOf(r, division) : 0)) - here is double moved && double.IsFinite(moved)
            ? moved * moved : 0)) * OddGroupsOfClass.ReadingInDivisions;
    }

    /// <summary>An answer from readings, unrounded.</summary>
    public double ValueOf(AskedValue value, Func<string, double> readings) => Number(value.Expanded, readings);

    /// <summary>Not a number where a reading is missing, or where it divides by nothing.</summary>
    private double Number(Expression formula, Func<string, double> readings) =>
        ValueRange.Of(formula, name => ValueRange.Of(readings(name)), molarMass) is { IsKnown: true } range ? range.Middle : double.NaN;
}
