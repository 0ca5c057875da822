using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

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

    private readonly Arm? arm;

    /// <summary>Runs the model with the ideal of every parameter.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="arm">The arm whose numbers take the place of the practical's where no ideal is named; null for the ordinary way.</param>
    public IdealRun(Practical practical, AtomicWeights weights, Arm? arm = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        this.practical = practical;
        this.weights = weights;
        this.arm = arm;
        model = new BenchModel(practical, weights);
        Masses = model.Run(Ideal, rounds: 1);
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

    /// <summary>The whole change of mass of 1 g of sample where so many times the ideal of one parameter is put in: less than
    /// <see cref="ChangeOfOneGram"/> where another reactant runs out.</summary>
    /// <param name="parameterId">The parameter that the sample follows.</param>
    /// <param name="times">Above 0.</param>
    public double ChangeOfOneGramWith(string parameterId, double times)
    {
        Func<string, double> last = model.Run(id => (id == parameterId ? times : 1) * Ideal(id), rounds: 1).Last;
        return Value(practical.Findings.Change, last) / Value(practical.Findings.Sample, last);
    }

    /// <summary>Whether a quantity grows with the amounts that groups put in or set (a mass of product does, a share of the sample does
    /// not): a tenth more of them moves it by more than a hundredth.</summary>
    public bool FollowsAmounts(string quantityId)
    {
        HashSet<string> amounts =
        [
            .. Flat(practical.Procedure).SelectMany(step => step switch
            {
                AddEvent add => add.Mass.Names,
                SetEvent set => set.To.Names,
                _ => [],
            }),
        ];
        amounts.ExceptWith(practical.Parameters.Where(p => p.Shared).Select(p => p.Id));
        double usual = Accepted(quantityId);
        double more = Value(quantityId, model.Run(id => (amounts.Contains(id) ? 1.1 : 1) * Ideal(id), rounds: 1).Last);
        return Math.Abs(more - usual) > Math.Max(0.01 * Math.Abs(usual), 1e-9);
    }

    /// <summary>How far numbers that a whole class shares move a quantity in all its groups alike: for each what it does when it is off
    /// from its ideal by the root mean square of its law. Nothing for a property of the stock itself, which the class is to find, for a mass
    /// that goes with the amounts, and for a number that is said of the class.</summary>
    /// <param name="quantityId">The quantity.</param>
    /// <param name="circumstances">What is said of the class.</param>
    public IReadOnlyList<(Parameter Parameter, double StandardUncertainty)> SharedIn(string quantityId, Circumstances circumstances)
    {
        ArgumentNullException.ThrowIfNull(circumstances);
        return practical.Findings.NoAccepted is not null || FollowsAmounts(quantityId)
            ? [] : SharedIn(readings => Value(quantityId, readings), circumstances);
    }

    /// <summary>The same of one quantity over another.</summary>
    public IReadOnlyList<(Parameter Parameter, double StandardUncertainty)> SharedIn(string quantityId, string overId, Circumstances circumstances) =>
        practical.Findings.NoAccepted is not null ? [] : SharedIn(readings => Value(quantityId, readings) / Value(overId, readings), circumstances);

    /// <summary>The same of any number made from the readings.</summary>
    /// <param name="number">The number, from the last weighing of each reading in g.</param>
    /// <param name="circumstances">What is said of the class.</param>
    public IReadOnlyList<(Parameter Parameter, double StandardUncertainty)> SharedIn(
        Func<Func<string, double>, double> number, Circumstances circumstances)
    {
        ArgumentNullException.ThrowIfNull(number);
        ArgumentNullException.ThrowIfNull(circumstances);
        double ideal = number(Masses.Last);
        var parts = new List<(Parameter, double)>();
        for (int p = 0; p < practical.Parameters.Count; p++)
        {
            Parameter parameter = practical.Parameters[p];
            if (parameter.Shared && circumstances.IsOpen(p))
            {
                (double mean, double variance) = LawMoments.Of(circumstances.LawOf(p));
                double off = Ideal(parameter.Id) - mean;
                // What is off by this much in the root mean square, towards where the law lies.
                double far = Ideal(parameter.Id) + (Math.Sqrt((off * off) + variance) * (off > 0 ? -1 : 1));
                parts.Add((parameter, Math.Abs(number(model.Run(id => id == parameter.Id ? far : Ideal(id), rounds: 1).Last) - ideal)));
            }
        }

        return [.. parts.Where(part => part.Item2 > Math.Max(1e-6 * Math.Abs(ideal), 1e-9))];
    }

    private static IEnumerable<ProcedureEvent> Flat(IReadOnlyList<ProcedureEvent> events) =>
        events.SelectMany(e => e is RepeatEvent repeat ? Flat(repeat.Do) : [e]);

    private double Ideal(string id) =>
        practical.Parameters.First(p => p.Id == id).Ideal is null && arm?.Set.FirstOrDefault(s => s.Parameter == id) is ParameterSetting setting
            ? LawMiddle.Of(setting.Law) : model.Ideal(id);

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
        set.Settings.FirstOrDefault(s => s.Parameter == id) is ParameterSetting setting ? LawMiddle.Of(setting.Law) : Ideal(id);

    private Func<string, double> Shifted(string readingId, double byGrams) =>
        id => Masses.Last(id) + (id == readingId ? byGrams : 0);

    private double Value(string quantityId, Func<string, double> reading) =>
        practical.Quantities.First(q => q.Id == quantityId).Formula
            .Evaluate(reading, formula => Formula.Parse(formula).Value.MolarMass(weights).Value);
}
