using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>What is said of mass against time.</summary>
internal sealed class CurveWords(Practical practical, EngineLanguage language)
{
    private const int MostQuantities = 3;

    private readonly SeriesTexts texts = new(language);
    private readonly Wording wording = new(language);

    /// <summary>The sentences of a class's conclusion.</summary>
    public IReadOnlyList<ConclusionSentence> Sentences(
        IReadOnlyList<ClassCurveQuantity> pooled, IReadOnlyList<GroupFindings> groups, string order)
    {
        var sentences = new List<ConclusionSentence>();
        if (pooled.Count > 0)
        {
            string[] values = [.. pooled.Take(MostQuantities).Select(Value)];
            int count = pooled.Max(q => q.Count);
            sentences.Add(new(ConclusionTopic.Curve, count == 1
                ? texts.CurveGives(wording.And(values)) : texts.CurvesGive(wording.CountFirst(count), wording.And(values))));
        }
        else
        {
            string[] reasons = [.. groups.Select(g => g.Curve?.Reason).OfType<string>().Distinct()];
            sentences.Add(new(ConclusionTopic.Curve, reasons.Length == 1 ? texts.NoCurveBecause(reasons[0]) : texts.NoCurve));
        }

        sentences.Add(new(ConclusionTopic.Curve, order));
        return sentences;
    }

    /// <summary>The order of the class in a sentence.</summary>
    public string Order(KineticOrder? order, IReadOnlyList<GroupFindings> groups, IReadOnlyList<double>? together)
    {
        int alone = groups.Count(g => g.Curve?.Order is OrderVerdict.Prefers prefers && prefers.Order == order);
        int compared = groups.Count(g => g.Curve?.Order is OrderVerdict.Prefers or OrderVerdict.CannotTell);
        if (together is null)
        {
            return texts.OrderNotCompared;
        }

        if (order is KineticOrder found)
        {
            return texts.OrderShown(Name(found), alone.InFigures(), compared.InFigures(), Probability(together[(int)found]));
        }

        KineticOrder[] preferred = [.. groups.Select(g => g.Curve?.Order).OfType<OrderVerdict.Prefers>().Select(p => p.Order).Distinct().Order()];
        KineticOrder[] ranked = [.. Enum.GetValues<KineticOrder>().OrderByDescending(o => together[(int)o])];
        return preferred.Length > 1
            ? texts.OrderDiffers(wording.AllAnd([.. preferred.Select(Name)]))
            : texts.OrderOpen(Name(ranked[0]), Name(ranked[1]));
    }

    /// <summary>The order of one group in a few words for a table.</summary>
    public string Brief(OrderVerdict verdict) => verdict switch
    {
        OrderVerdict.Prefers prefers => texts.OrderBrief(Name(prefers.Order), Probability(prefers.Probability)),
        OrderVerdict.CannotTell => texts.CannotTell,
        _ => texts.NotCompared,
    };

    /// <summary>The name of an order.</summary>
    public string Name(KineticOrder order) => order switch
    {
        KineticOrder.Zeroth => texts.Zeroth,
        KineticOrder.First => texts.First,
        _ => texts.Second,
    };

    /// <summary>A disturbance in a sentence, with the unit of the practical's times.</summary>
    public string Disturbed(Disturbance disturbance, TimeSeries points)
    {
        string unit = practical.Series!.TimeUnit;
        string Time(int at) => points.Readings[at].Time + " " + unit;
        string size = Figures.Text(Math.Abs(disturbance.Size), Math.Max(2, points.Readings.Max(r => r.Reading!.Value.Decimals))) + " g";
        bool below = disturbance.Size < 0;
        return disturbance switch
        {
            Disturbance.Spike => below ? texts.SpikeBelow(Time(disturbance.First), size) : texts.SpikeAbove(Time(disturbance.First), size),
            Disturbance.Run => below
                ? texts.RunBelow(Time(disturbance.First), Time(disturbance.Last), size) : texts.RunAbove(Time(disturbance.First), Time(disturbance.Last), size),
            _ => below ? texts.JumpBelow(Time(disturbance.First), size) : texts.JumpAbove(Time(disturbance.First), size),
        };
    }

    private string Value(ClassCurveQuantity quantity)
    {
        int decimals = Figures.DecimalsFor(quantity.StandardUncertainty);
        return texts.Value(
            quantity.Quantity.Label,
            Figures.Text(quantity.Value, decimals) + quantity.Quantity.UnitBehind,
            Figures.Text(quantity.Interval.Low, decimals),
            Figures.Text(quantity.Interval.High, decimals));
    }

    private static string Probability(double p) => p > 0.995 ? "> 0.99" : Figures.Text(p, 2);
}
