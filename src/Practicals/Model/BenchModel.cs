using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model;

/// <summary>
/// The practical's generative model without its noise: given the numbers in which groups differ, the true mass of what
/// is on the pan at every weighing. Every use of a practical goes through it; nothing describes the practical a second
/// time. Masses are sums of products of the parameters, so they are smooth in them.
/// </summary>
public sealed class BenchModel
{
    private readonly Practical practical;
    private readonly BenchProgram program;

    /// <summary>Prepares a practical: molar masses and coefficients are looked up once.</summary>
    public BenchModel(Practical practical, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(weights);
        this.practical = practical;
        program = new BenchProgram(practical, weights);
    }

    /// <summary>The true masses of one group, with parts of typical mass.</summary>
    /// <param name="parameters">The value of each parameter of the practical, by id; the same in every round.</param>
    /// <param name="rounds">Rounds of each repeated step, at least 1; no more than the practical allows are done.</param>
    public TrueMasses Run(Func<string, double> parameters, int rounds)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentOutOfRangeException.ThrowIfLessThan(rounds, 1);
        double[] values = new double[program.Dimensions.Count];
        for (int p = 0; p < practical.Parameters.Count; p++)
        {
            values.AsSpan(program.Dimensions.RangeOf(p)).Fill(parameters(practical.Parameters[p].Id));
        }

        IReadOnlyList<Weighing> weighings = program.Weighings(rounds);
        double[] masses = new double[weighings.Count];
        program.Walk(values, rounds, program.NewState(), masses);
        var byId = new Dictionary<string, double>(StringComparer.Ordinal);
        var lastOf = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((Weighing weighing, double mass) in weighings.Zip(masses))
        {
            byId[weighing.Id] = practical.Reading(weighing.Reading).Pan.Parts.Sum(TypicalMass) + mass;
            lastOf[weighing.Reading] = weighing.Id;
        }

        return new TrueMasses(byId, lastOf);
    }

    /// <summary>A parameter's value where the reaction is complete and nothing goes wrong.</summary>
    public double Ideal(string parameterId)
    {
        Parameter parameter = practical.Parameters.First(p => p.Id == parameterId);
        return parameter.Ideal ?? LawMiddle.Of(parameter.Law);
    }

    private double TypicalMass(string partId) => practical.Parts.First(p => p.Id == partId).Mass.Typical;
}
