using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>What the rest of a class says of a group before its own readings are looked at: how much the groups put in (a class
/// may have been told another mass than the practical's file says), and whether observations are noted at all.</summary>
public sealed class Classmates
{
    /// <summary>With fewer groups the class's own median may be a slip.</summary>
    private const int FewestGroups = 3;

    /// <summary>Twice the practical's own relative spread (judgement): wide enough for a class that helps itself.</summary>
    private const double Spread = 2;

    private Classmates(IReadOnlyList<AmountPrior> priors, bool noteObservations)
    {
        Priors = priors;
        NoteObservations = noteObservations;
    }

    /// <summary>Whether any group of the class noted what it saw.</summary>
    public bool NoteObservations { get; }

    internal IReadOnlyList<AmountPrior> Priors { get; }

    internal static Classmates Of(CauseModel model, IReadOnlyList<GroupReadings> groups)
    {
        IReadOnlyList<AmountPrior> usual = model.UsualAmounts(Spread);
        bool note = groups.Any(g => g.Remarks.Observations.Count > 0);
        double[] samples = [.. groups.Select(g => SampleOf(model.Practical, g)).OfType<double>().Where(s => s > 0)];
        if (usual.Count != 1 || samples.Length < FewestGroups)
        {
            return new Classmates(usual, note);
        }

        double ratio = Summary.Median(samples) / usual[0].Mean;
        return new Classmates([new AmountPrior(usual[0].Mean * ratio, usual[0].StandardDeviation * ratio)], note);
    }

    /// <summary>The sample as the first readings tell it, in g; null where they do not.</summary>
    private static double? SampleOf(Practical practical, GroupReadings group)
    {
        QuantityDefinition sample = practical.Quantities.First(q => q.Id == practical.Findings.Sample);
        if (group.DerivedColumns.FirstOrDefault(c => practical.FindColumn(c.BaseId)?.Stands.Equals(sample.Formula) == true) is TakenReading column)
        {
            return column.Value.AsDouble;
        }

        return sample.Formula.Names.All(name => group.LastOf(name) is not null)
            ? sample.Formula.Evaluate(name => group.LastOf(name)!.Value.AsDouble, _ => double.NaN)
            : null;
    }
}
