using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model;

/// <summary>
/// The practical with its reaction complete and nothing going wrong: where the accepted values come from, and what each
/// fault is held against.
/// </summary>
public sealed class IdealRun
{
    private readonly Practical practical;
    private readonly BenchModel model;
    private readonly AtomicWeights weights;

    /// <summary>Runs the model with the ideal of every parameter.</summary>
    public IdealRun(Practical practical, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(practical);
        this.practical = practical;
        this.weights = weights;
        model = new BenchModel(practical, weights);
        Masses = model.Run(model.Ideal, rounds: 1);
    }

    /// <summary>The true masses at each weighing.</summary>
    public TrueMasses Masses { get; }

    /// <summary>The accepted value of a quantity: what its formula gives on perfect readings.</summary>
    public double Accepted(string quantityId) => Value(quantityId, Masses.Last);

    /// <summary>The whole change of mass of 1 g of sample, signed.</summary>
    public double ChangeOfOneGram => Accepted(practical.Findings.Change) / Accepted(practical.Findings.Sample);

    /// <summary>
    /// Which way a fault of middle size moves the key quantity: +1 up, -1 down, 0 where it can do either or neither.
    /// </summary>
    public int DirectionOf(FaultDefinition fault) => DirectionOf(fault, readings => Value(practical.Findings.Key, readings));

    /// <summary>The same for any number made from the readings.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="number">The number, from the last weighing of each reading in g.</param>
    public int DirectionOf(FaultDefinition fault, Func<Func<string, double>, double> number)
    {
        ArgumentNullException.ThrowIfNull(fault);
        ArgumentNullException.ThrowIfNull(number);
        double ideal = number(Masses.Last);
        // A change below a millionth, or of what is 0 below a nanogram, is rounding: the fault does not reach the number.
        return With(fault) is Func<string, double> readings && number(readings) - ideal is double moved && Math.Abs(moved) > Math.Max(1e-6 * Math.Abs(ideal), 1e-9) ? Math.Sign(moved) : 0;
    }

    /// <summary>How much groups of this practical differ in a number made from their readings: the standard deviation that its faults
    /// make, each at its rate and of its middle size. What goes either way (a slip, a part left off, another zero) is not in it;
    /// 0 where no other fault moves the number.</summary>
    /// <param name="number">The number, from the last weighing of each reading in g.</param>
    public double SpreadOf(Func<Func<string, double>, double> number)
    {
        ArgumentNullException.ThrowIfNull(number);
        double ideal = number(Masses.Last);
        double variance = practical.Faults.Sum(fault => With(fault) is Func<string, double> readings && number(readings) - ideal is double moved
            ? fault.Rate * (1 - fault.Rate) * moved * moved : 0);
        return variance > 1e-12 * ideal * ideal ? Math.Sqrt(variance) : 0;
    }

    /// <summary>The same of a quantity, in its unit.</summary>
    public double SpreadOf(string quantityId) => SpreadOf(readings => Value(quantityId, readings));

    /// <summary>The same of one quantity over another.</summary>
    public double SpreadOf(string quantityId, string overId) => SpreadOf(readings => Value(quantityId, readings) / Value(overId, readings));

    /// <summary>The last weighings with a fault of middle size; null where it goes either way.</summary>
    private Func<string, double>? With(FaultDefinition fault) => fault.Effect switch
    {
        FaultEffect.Set set => model.Run(id => With(set, id), rounds: 1).Last,
        FaultEffect.Warm warm => Shifted(
            warm.Reading, -LawMiddle.Of(warm.ExcessInKelvin) * LawMiddle.Of(warm.MilligramsPerKelvin) / 1000),
        FaultEffect.Gain gain => Shifted(gain.Reading, LawMiddle.Of(gain.Mass)),
        _ => null, // A part left off, another zero or a slip of the pen.
    };

    private double With(FaultEffect.Set set, string id) =>
        set.Settings.FirstOrDefault(s => s.Parameter == id) is ParameterSetting setting ? LawMiddle.Of(setting.Law) : model.Ideal(id);

    private Func<string, double> Shifted(string readingId, double byGrams) =>
        id => Masses.Last(id) + (id == readingId ? byGrams : 0);

    private double Value(string quantityId, Func<string, double> reading) =>
        practical.Quantities.First(q => q.Id == quantityId).Formula
            .Evaluate(reading, formula => Formula.Parse(formula).Value.MolarMass(weights).Value);
}
