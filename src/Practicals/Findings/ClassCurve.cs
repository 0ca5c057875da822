using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Measurement.Statistics.Series;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>What mass against time shows of a class: quantities pooled over the groups, and the order that they agree on.</summary>
public sealed class ClassCurve
{
    private ClassCurve(
        SeriesDefinition series,
        IReadOnlyList<ClassCurveQuantity> quantities,
        IReadOnlyList<double>? probabilities,
        KineticOrder? order,
        string orderSentence,
        IReadOnlyList<ConclusionSentence> sentences)
    {
        (Series, Quantities, Probabilities, Order, OrderSentence, Sentences) = (series, quantities, probabilities, order, orderSentence, sentences);
    }

    /// <summary>The series.</summary>
    public SeriesDefinition Series { get; }

    /// <summary>Pooled over the groups that are not set aside; those that no group gives are absent.</summary>
    public IReadOnlyList<ClassCurveQuantity> Quantities { get; }

    /// <summary>Probability of each order, zeroth first, when one holds for all groups; null where no group could be compared.</summary>
    public IReadOnlyList<double>? Probabilities { get; }

    /// <summary>The order that the class shows, or null where it cannot tell.</summary>
    public KineticOrder? Order { get; }

    /// <summary>The same in a sentence.</summary>
    public string OrderSentence { get; }

    /// <summary>What is said of it in the class's conclusion.</summary>
    internal IReadOnlyList<ConclusionSentence> Sentences { get; }

    /// <summary>A pooled quantity, or null.</summary>
    public ClassCurveQuantity? Find(string id) => Quantities.FirstOrDefault(q => q.Quantity.Id == id);

    /// <summary>Pools the curves of a class; null where the practical takes no series.</summary>
    internal static ClassCurve? Of(Practical practical, IReadOnlyList<GroupFindings> groups, EngineLanguage language)
    {
        if (practical.Series is not SeriesDefinition series)
        {
            return null;
        }

        GroupFindings[] kept = [.. groups.Where(g => !g.IsSetAside(practical.Findings.Change))];
        ClassCurveQuantity[] pooled = [.. series.Quantities.Select(q => Pool(q, kept)).OfType<ClassCurveQuantity>()];
        double[][] compared = [.. kept.Select(g => ProbabilitiesOf(g.Curve?.Order)).OfType<double[]>()];
        double[]? together = compared.Length == 0 ? null : Together(compared);
        KineticOrder[] preferred = [.. kept.Select(g => g.Curve?.Order).OfType<OrderVerdict.Prefers>().Select(p => p.Order).Distinct()];
        KineticOrder? order = together is not null && preferred.Length <= 1 && Array.IndexOf(together, together.Max()) is int best
            && together[best] >= OrderComparison.Preferred && (preferred.Length == 0 || preferred[0] == (KineticOrder)best) ? (KineticOrder)best : null;
        var words = new CurveWords(practical, language);
        string said = words.Order(order, kept, together);
        return new ClassCurve(series, pooled, together, order, said, words.Sentences(pooled, groups, said));
    }

    /// <summary>Groups are separate evidence of one order.</summary>
    private static double[] Together(double[][] compared)
    {
        double[] logs = [.. Enumerable.Range(0, compared[0].Length).Select(o => compared.Sum(p => Math.Log(Math.Max(p[o], 1e-300))))];
        double[] weights = [.. logs.Select(log => Math.Exp(log - logs.Max()))];
        return [.. weights.Select(w => w / weights.Sum())];
    }

    private static double[]? ProbabilitiesOf(OrderVerdict? verdict) => verdict switch
    {
        OrderVerdict.Prefers prefers => [.. prefers.Probabilities],
        OrderVerdict.CannotTell cannot => [.. cannot.Probabilities],
        _ => null,
    };

    private static ClassCurveQuantity? Pool(CurveQuantityDefinition quantity, GroupFindings[] groups)
    {
        CurveQuantity[] found = [.. groups.Select(g => g.Curve?.Find(quantity.Id)).OfType<CurveQuantity>()];
        if (found.Length == 0)
        {
            return null;
        }

        PooledResult pooled = RandomEffects.FromKnownUncertainties(
            [.. found.Select(q => q.Value!.Value)], [.. found.Select(q => q.StandardUncertainty!.Value)], 0);
        CoverageInterval interval = found.Length == 1 ? found[0].Interval!.Value
            : Around(pooled.Value, StudentT.Quantile(0.975, pooled.DegreesOfFreedom) * pooled.StandardUncertainty);
        if (found.All(q => q.Interval!.Value.Low >= 0))
        {
            // A time, a loss or a rate that no group leaves below nothing is not below nothing in the class, however few the groups are.
            interval = new CoverageInterval(Math.Max(0, interval.Low), interval.High, 0.95);
        }

        return new ClassCurveQuantity(quantity, pooled.Value, pooled.StandardUncertainty, interval, pooled.Between, found.Length);
    }

    private static CoverageInterval Around(double middle, double half) => new(middle - half, middle + half, 0.95);
}

/// <summary>One quantity of the curves, pooled over the groups of a class.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Value">In its unit.</param>
/// <param name="StandardUncertainty">Chance only: a bias that all groups share is not in it.</param>
/// <param name="Interval">95 %.</param>
/// <param name="Between">Standard deviation between groups beyond what their own points leave open.</param>
/// <param name="Count">Groups pooled.</param>
public sealed record ClassCurveQuantity(
    CurveQuantityDefinition Quantity, double Value, double StandardUncertainty, CoverageInterval Interval, double Between, int Count)
{
    /// <summary>Value and standard uncertainty as shown to a person, without the unit.</summary>
    public string Text => Figures.WithUncertainty(Value, StandardUncertainty);
}
