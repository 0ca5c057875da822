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
        AmountPrior[] usual = [.. model.UsualAmounts(Spread).Select((prior, a) => Shown(model, groups, a, prior))];
        bool note = groups.Any(g => g.Remarks.Observations.Count > 0);
        int sample = model.Hidden.SampleAmount;
        double[] samples = [.. groups.Select(g => SampleOf(model, g)).OfType<double>().Where(s => s > 0)];
        if (sample < 0 || model.Hidden.Rule.Amounts.ShownBy[sample] is not null || samples.Length < FewestGroups)
        {
            return new Classmates(usual, note);
        }

        double ratio = Summary.Median(samples) / (usual.Length == 1 ? usual[0].Mean : model.Hidden.Rule.MiddleSample(sample));
        usual[sample] = new AmountPrior(usual[sample].Mean * ratio, usual[sample].StandardDeviation * ratio);
        return new Classmates(usual, note);
    }

    /// <summary>What a reading shows by itself is taken as the class read it: another sheet may say another time.</summary>
    private static AmountPrior Shown(CauseModel model, IReadOnlyList<GroupReadings> groups, int amount, AmountPrior usual)
    {
        string? reading = model.Hidden.Rule.Amounts.ShownBy[amount];
        double[] read = [.. groups.Select(g => reading is null ? null : g.LastOf(reading)).OfType<TakenReading>().Select(r => r.Value.AsDouble)];
        if (read.Length < FewestGroups)
        {
            return usual;
        }

        double median = Summary.Median(read);
        double away = Math.Abs(median - usual.Mean) / usual.StandardDeviation;
        double wider = usual.Mean == 0 ? 1 : Math.Max(1, Math.Abs(median / usual.Mean));
        // A class near its file keeps the file's middle: a few readings are no better than it.
        return away <= 1 ? usual : new AmountPrior(median, usual.StandardDeviation * wider);
    }

    /// <summary>The sample as the first readings tell it, in g; null where they do not.</summary>
    private static double? SampleOf(CauseModel model, GroupReadings group)
    {
        Practical practical = model.Practical;
        QuantityDefinition sample = practical.Quantities.First(q => q.Id == practical.Findings.Sample);
        if (group.DerivedColumns.FirstOrDefault(c => practical.FindColumn(c.BaseId)?.Stands.Equals(sample.Formula) == true) is TakenReading column)
        {
            return column.Value.AsDouble;
        }

        return sample.Formula.Names.All(name => group.LastOf(name) is not null)
            ? sample.Formula.Evaluate(name => group.LastOf(name)!.Value.AsDouble, model.MolarMass)
            : null;
    }
}
