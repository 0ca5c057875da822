using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.Papers.Charts;

/// <summary>Which groups a chart can show, and what is said of the others.</summary>
internal static class Shown
{
    /// <summary>More groups than this make a chart a wall of ink; a whole year's file is thinned evenly.</summary>
    public const int MostGroups = 48;

    private const int MostNamed = 8;

    /// <summary>At most <see cref="MostGroups"/> of them, evenly over their order.</summary>
    public static IReadOnlyList<T> Thinned<T>(IReadOnlyList<T> all)
    {
        if (all.Count <= MostGroups)
        {
            return all;
        }

        return [.. Enumerable.Range(0, MostGroups).Select(i => all[(int)((long)i * (all.Count - 1) / (MostGroups - 1))])];
    }

    /// <summary>What to say of groups left off: too far away, or too many.</summary>
    public static string Caption(IReadOnlyList<string> offScale, int shown, int all, ChartTexts texts)
    {
        string named = string.Join("; ", offScale.Take(MostNamed));
        string far = offScale.Count == 0 ? string.Empty
            : offScale.Count > MostNamed ? texts.OffScaleAndMore(named, InDigits(offScale.Count - MostNamed)) : texts.OffScale(named);
        string thinned = shown < all ? texts.SomeDrawn(InDigits(shown), InDigits(all)) : string.Empty;
        return string.Join(' ', new[] { far, thinned }.Where(part => part.Length > 0));
    }

    /// <summary>A whole number in digits.</summary>
    public static string InDigits(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Name of an axis: quantity / unit, or the quantity alone where it has none.</summary>
    public static string Axis(QuantityDefinition quantity, ChartTexts texts) =>
        quantity.Unit == "1" ? quantity.Label : texts.QuantityUnit(quantity.Label, quantity.Unit);

    /// <summary>The accepted value: a whole number as one, else three decimals.</summary>
    public static string Accepted(AcceptedResult.Compared compared) => Accepted(compared.Accepted);

    /// <summary>The same of a bare value.</summary>
    public static string Accepted(double value) => Figures.Text(value, Math.Abs(value - Math.Round(value)) < 1e-9 ? 0 : 3);

    /// <summary>The groups that the ends of an axis are made from: those without an odd result, or all where every
    /// result is odd.</summary>
    public static IReadOnlyList<GroupFindings> Core(IReadOnlyList<GroupFindings> groups)
    {
        GroupFindings[] sound = [.. groups.Where(g => !g.IsAnomalous)];
        return sound.Length > 0 ? sound : groups;
    }
}
