using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Program;

/// <summary>
/// A practical's procedure made ready to be walked through often: the one description of what happens on the bench,
/// behind predictions, simulated classes and the search for causes alike.
/// </summary>
internal sealed class BenchProgram
{
    private readonly ProgramSteps steps;
    private readonly int slots;
    private readonly int materials;
    private readonly int places;

    /// <summary>Prepares a practical.</summary>
    public BenchProgram(Practical practical, AtomicWeights weights)
    {
        Dimensions = new BenchDimensions(practical);
        steps = new ProgramSteps(practical, weights, Dimensions);
        slots = practical.Parameters.Count + practical.Gauges.Count;
        materials = practical.Materials.Count;
        places = practical.Places.Count;
    }

    /// <summary>The numbers that a walk needs.</summary>
    public BenchDimensions Dimensions { get; }

    /// <summary>A bench to walk on.</summary>
    public BenchState NewState() => new(slots, places, materials);

    /// <summary>The readings of a walk, in order: weighings, and those of gauges.</summary>
    /// <param name="rounds">Rounds of each repeated step.</param>
    /// <param name="beyond">Rounds more than the practical allows, to see what further heating would do; 0 or 1.</param>
    public IReadOnlyList<Weighing> Weighings(int rounds, int beyond = 0)
    {
        var weighings = new List<Weighing>();
        var taken = new Dictionary<string, int>(StringComparer.Ordinal);
        steps.List(rounds, beyond, reading =>
        {
            int occurrence = taken[reading] = taken.GetValueOrDefault(reading) + 1;
            weighings.Add(new Weighing(reading, occurrence));
        });
        return weighings;
    }

    /// <summary>Walks through the procedure.</summary>
    /// <param name="values">A number for each of <see cref="Dimensions"/>.</param>
    /// <param name="rounds">Rounds of each repeated step, at least 1; no more than the practical allows are done.</param>
    /// <param name="state">A bench of this program.</param>
    /// <param name="readings">Masses in g of what is on the pan but the parts, and what gauges are at, each in its unit; in the
    /// order of <see cref="Weighings"/>; may be longer.</param>
    /// <param name="beyond">Rounds more than the practical allows; 0 or 1.</param>
    public void Walk(ReadOnlySpan<double> values, int rounds, BenchState state, Span<double> readings, int beyond = 0)
    {
        state.Clear();
        steps.Walk(values, rounds, beyond, state, readings);
    }
}
