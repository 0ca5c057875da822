using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Where the readings of the points are taken as straight lines in the amounts. Masses that are put in have one place for all
/// groups: what they make is a straight line anyhow. What a gauge is set to multiplies other things (a current times a time), so
/// the line is laid near what the group itself read; groups that are near each other share it.
/// </summary>
internal sealed class AmountCentre
{
    /// <summary>Groups within this many spreads of the law share a centre: products are then true to a thousandth or so.</summary>
    private const double Cell = 3;

    private AmountCentre(double[] amounts, double[] steps, string key)
    {
        Amounts = amounts;
        Steps = steps;
        Key = key;
    }

    /// <summary>The amounts.</summary>
    public double[] Amounts { get; }

    /// <summary>How far each is moved to find the slope.</summary>
    public double[] Steps { get; }

    /// <summary>The same for the same centre.</summary>
    public string Key { get; }

    /// <summary>The practical's own middle.</summary>
    public static AmountCentre Usual(HiddenGroups hidden) => Of(hidden, (_, middle, _) => middle);

    /// <summary>Near what a group's gauges showed and its classmates put in.</summary>
    public static AmountCentre Of(HiddenGroups hidden, GroupReadings group, IReadOnlyList<AmountPrior> priors)
    {
        AmountList amounts = hidden.Rule.Amounts;
        return !amounts.HasGauges ? Usual(hidden) : Of(hidden, (amount, middle, spread) =>
        {
            double near = amounts.ShownBy[amount] is string reading && group.LastOf(reading) is TakenReading taken
                ? taken.Value.AsDouble : priors[amount].Mean;
            return middle + (Cell * spread * Math.Round((near - middle) / (Cell * spread)));
        });
    }

    private static AmountCentre Of(HiddenGroups hidden, Func<int, double, double, double> near)
    {
        // Step of the secant of a mass put in, of the mass itself.
        const double Share = 0.25;
        AmountList list = hidden.Rule.Amounts;
        double[] amounts = new double[list.Count];
        double[] steps = new double[list.Count];
        for (int a = 0; a < amounts.Length; a++)
        {
            ParameterLaw law = hidden.Circumstances.LawOf(list.Parameters[a]);
            double middle = LawQuantile.Median(law);
            double spread = CauseModel.SpreadOf(law);
            amounts[a] = near(a, middle, spread);
            steps[a] = list.IsPutIn(a) ? Share * amounts[a] : spread;
        }

        return new AmountCentre(amounts, steps, string.Join(' ', amounts));
    }
}
