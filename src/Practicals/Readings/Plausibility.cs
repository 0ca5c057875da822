using System.Globalization;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>
/// Notices a heading over numbers that cannot be what it says: whole weighings under 'mass of sample', subtracted masses
/// under 'mass after heating', two headings swapped. Such a column is set aside and told, never used on a guess.
/// </summary>
internal sealed class Plausibility
{
    // Below a quarter of the lightest vessel, or above twenty times the heaviest, no choice of vessel explains it.
    private const decimal FarBelow = 0.25m;
    private const decimal FarAbove = 20m;

    // Fewer groups than three cannot outvote one slip of the pen.
    private const int FewestGroups = 3;

    private readonly Dictionary<string, Dictionary<RawGroup, decimal>> values = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ExpectedColumn> columns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> impossible = new(StringComparer.Ordinal);

    private readonly ClassFileTexts texts;

    private Plausibility(IEnumerable<RawGroup> groups, ClassFileTexts texts)
    {
        this.texts = texts;
        foreach (RawGroup group in groups)
        {
            foreach (RawReading reading in group.Readings)
            {
                if (!values.TryGetValue(reading.Id, out Dictionary<RawGroup, decimal>? ofId))
                    values[reading.Id] = ofId = [];
                ofId[group] = reading.Value.Value;
                columns[reading.Id] = reading.Column;
            }
        }
    }

    /// <summary>Why the numbers of a reading or ready-made column cannot be what its heading says, by id.</summary>
    public static IReadOnlyDictionary<string, string> Impossible(IReadOnlyList<RawGroup> groups, ClassFileTexts texts)
    {
        Plausibility check = new(groups, texts);
        foreach (string id in check.columns.Keys.Order(StringComparer.Ordinal))
            check.CheckSize(id);
        foreach (string id in check.columns.Keys.Order(StringComparer.Ordinal))
            check.CheckOrder(id);
        return check.impossible;
    }

    private void CheckSize(string id)
    {
        ExpectedColumn column = columns[id];
        ExpectedLimits limits = column.Limits;
        decimal typical = Median(values[id].Values);
        if (column.Kind is ExpectedKind.Tared or ExpectedKind.Difference)
        {
            if (limits.LeastVesselInGrams is decimal vessel && typical >= vessel)
                impossible[id] = texts.WholeWeighings(Text(typical), column.Label);
        }
        else if (column.Kind == ExpectedKind.Weighing && limits.LeastVesselInGrams * FarBelow > typical)
        {
            impossible[id] = texts.LessThanVessel(Text(typical), column.Label);
        }
        else if (column.Kind == ExpectedKind.Weighing && limits.MostVesselInGrams * FarAbove < typical)
        {
            impossible[id] = texts.FarMoreThanVessel(Text(typical));
        }
    }

    private void CheckOrder(string id)
    {
        foreach (string lighterId in columns[id].Limits.HeavierThan.Where(values.ContainsKey))
        {
            if (impossible.ContainsKey(id) || impossible.ContainsKey(lighterId))
                continue;
            RawGroup[] both = [.. values[id].Keys.Where(values[lighterId].ContainsKey)];
            int contrary = both.Count(g => values[id][g] < values[lighterId][g]);
            if (both.Length >= FewestGroups && 2 * contrary > both.Length && !LacksPart(id, lighterId, both))
                TellOrder(id, lighterId, contrary, both);
        }
    }

    /// <summary>Whether a part left off the pan explains it rather than a wrong heading: what is missing weighs as much as such a part, and
    /// either some groups have it right or nothing in the vessel could weigh so much. The group's findings then name the cause.</summary>
    private bool LacksPart(string id, string lighterId, RawGroup[] both)
    {
        ExpectedLimits limits = columns[id].Limits;
        decimal[] missing = [.. both.Select(g => values[lighterId][g] - values[id][g]).Where(m => m > 0)];
        int explained = missing.Count(m => limits.MayLack.Any(p => m >= p.Low / 2 && m <= p.High * 3 / 2));
        return 2 * explained > missing.Length && (missing.Length < both.Length || Median(missing) > limits.MostInsideInGrams);
    }

    private void TellOrder(string id, string lighterId, int contrary, RawGroup[] both)
    {
        (string count, string of) = (contrary.InFigures(), both.Length.InFigures());
        string heavier = columns[id].Label;
        string lighter = columns[lighterId].Label;
        if (2 * Median(both.Select(g => values[id][g])) < Median(both.Select(g => values[lighterId][g])))
        {
            impossible[id] = texts.LighterSubtracted(lighter, count, of, heavier);
            return;
        }
        impossible[id] = texts.LighterSwapped(lighter, count, of);
        impossible[lighterId] = texts.HeavierSwapped(heavier, count, of);
    }

    private static decimal Median(IEnumerable<decimal> numbers)
    {
        decimal[] sorted = [.. numbers.Order()];
        return sorted[sorted.Length / 2];
    }

    private static string Text(decimal grams) => grams.ToString("0.####", CultureInfo.InvariantCulture);
}
