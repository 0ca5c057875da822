using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Statistics;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>
/// What a class will probably weigh and find, faults, noise and slips of the pen included: from groups drawn as a simulated
/// class draws them (docs/methods/simulation.md).
/// </summary>
public sealed class Prediction
{
    /// <summary>Groups drawn unless another number is given: the ends of a 95 % interval then stand at ranks 100 and
    /// 3900.</summary>
    public const int UsualDraws = 4000;

    /// <summary>Streams of random numbers from here on are those of predictions: no group of a class has one of them.</summary>
    private const ulong FirstStream = 1UL << 32;

    private Prediction(int draws, IReadOnlyList<PredictedReading> readings, IReadOnlyList<PredictedQuantity> quantities)
    {
        Draws = draws;
        Readings = readings;
        Quantities = quantities;
    }

    /// <summary>How many groups were drawn.</summary>
    public int Draws { get; }

    /// <summary>The weighings, in order.</summary>
    public IReadOnlyList<PredictedReading> Readings { get; }

    /// <summary>The practical's quantities, in order.</summary>
    public IReadOnlyList<PredictedQuantity> Quantities { get; }

    /// <summary>Predicts.</summary>
    /// <param name="circumstances">The practical and what is said of the class.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="plan">What the class does; its number of groups does not matter.</param>
    /// <param name="draws">Groups to draw, at least 100.</param>
    /// <param name="seed">Which of the possible draws.</param>
    /// <param name="threads">Threads; 0 takes as many as there are processors. The result does not depend on it.</param>
    /// <param name="cancellation">Gives the work up.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 100 draws.</exception>
    /// <inheritdoc cref="SimulatedClass.Draw" path="/exception"/>
    public static Prediction Of(
        Circumstances circumstances,
        AtomicWeights weights,
        SimulationPlan plan,
        int draws = UsualDraws,
        ulong seed = 1,
        int threads = 0,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(circumstances);
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 100);
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = threads == 0 ? -1 : threads };
        return Of(SimulatedClass.Drawers(circumstances, weights, plan), draws, seed, options);
    }

    /// <summary>Predicts what a drawer draws.</summary>
    internal static Prediction Of(GroupDrawer drawer, int draws, ulong seed, ParallelOptions options) => Of([drawer], draws, seed, options);

    private static Prediction Of(GroupDrawer[] drawers, int draws, ulong seed, ParallelOptions options)
    {
        GroupDrawer drawer = drawers[0];
        Practical practical = drawer.Circumstances.Practical;
        SimulatedGroup[] groups = SimulatedClass.Many(drawers, draws, seed, FirstStream, options);
        return new Prediction(
            draws,
            [.. drawer.Views[^1].Weighings.Select(w => Reading(practical, groups, w)).OfType<PredictedReading>()],
            [.. practical.Quantities.Select(q => Quantity(practical, groups, q, drawer.Weights))]);
    }

    private static PredictedReading? Reading(Practical practical, SimulatedGroup[] groups, Weighing weighing)
    {
        var written = new List<double>();
        var contents = new List<double>();
        foreach (SimulatedGroup group in groups)
        {
            if (group.Readings.FirstOrDefault(r => r.Weighing == weighing) is SimulatedReading reading)
            {
                written.Add(reading.Written.AsDouble);
                contents.Add(reading.Written.AsDouble - group.PartsOnPanInGrams(weighing.Reading));
            }
        }

        bool hasParts = practical.Reading(weighing.Reading).Pan.Parts.Count > 0;
        return PredictedValue.Of(written, groups.Length) is not PredictedValue value
            ? null
            : new PredictedReading(
                weighing,
                WeighingLabel.Of(practical, weighing),
                practical.Reading(weighing.Reading),
                value,
                hasParts ? PredictedValue.Of(contents, groups.Length) : null,
                hasParts ? Summary.Median([.. groups.Select(g => g.PartsOnPanInGrams(weighing.Reading))]) : 0);
    }

    private static PredictedQuantity Quantity(
        Practical practical, SimulatedGroup[] groups, QuantityDefinition quantity, AtomicWeights weights)
    {
        var molarMasses = new Dictionary<string, double>(StringComparer.Ordinal);
        var values = new List<double>();
        bool read = quantity.Formula.Names.All(name => practical.Readings.Any(r => r.Id == name));
        foreach (SimulatedGroup group in read ? groups : [])
        {
            try
            {
                values.Add(quantity.Formula.Evaluate(Last, MolarMass));
            }
            catch (UndefinedResultException)
            {
                // Nothing was weighed in: this group finds no such value.
            }

            double Last(string id) => group.Readings.Last(r => r.Weighing.Reading == id).Written.AsDouble;
        }

        return new PredictedQuantity(quantity, PredictedValue.Of(values, groups.Length));

        double MolarMass(string formula)
        {
            if (!molarMasses.TryGetValue(formula, out double mass))
            {
                molarMasses[formula] = mass = Formula.Parse(formula).Value.MolarMass(weights).Value;
            }

            return mass;
        }
    }
}
