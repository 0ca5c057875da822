using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>Readings that cannot be what they seem, whatever the class: a sample lighter than nothing, or a mass that went the wrong
/// way, each by more than two standard uncertainties of the balance.</summary>
internal sealed class ImpossibleRule
{
    private const double Uncertainties = 2;

    private readonly QuantityLines sample;
    private readonly QuantityLines change;
    private readonly bool sampleIsFound;
    private readonly int direction;

    /// <summary>Prepares it.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="sampleIsFound">Whether the table gives the sample's mass.</param>
    public ImpossibleRule(Practical practical, AtomicWeights weights, bool sampleIsFound = true)
    {
        sample = Lines(practical.Findings.Sample);
        change = Lines(practical.Findings.Change);
        this.sampleIsFound = sampleIsFound;
        direction = practical.Findings.Expect switch { ExpectedChange.Rises => 1, ExpectedChange.Falls => -1, _ => 0 };

        QuantityLines Lines(string id) => new(practical, practical.Quantities.First(q => q.Id == id), weights);
    }

    /// <summary>Whether one group's readings are impossible.</summary>
    /// <param name="last">The last weighing of each reading, by its place in the practical's list, in g.</param>
    /// <param name="u">Standard uncertainty of one weighing, in g.</param>
    public bool Holds(ReadOnlySpan<double> last, double u)
    {
        MeasuredValue moved = change.Of(last, u);
        MeasuredValue taken = sampleIsFound ? sample.Of(last, u) : new MeasuredValue(0, 0);
        return direction * moved.Value < -Uncertainties * moved.StandardUncertainty
            || taken.Value < -Uncertainties * taken.StandardUncertainty;
    }
}
