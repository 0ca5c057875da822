using System.Globalization;
using System.Text;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Papers.Reports;

/// <summary>The report's table of groups: readings as written, what follows from them, and what to look into.</summary>
internal static class GroupTable
{
    /// <summary>A printed report of thousands of rows helps nobody; the JSON document has them all.</summary>
    private const int MostRows = 500;

    /// <summary>Quantity calculus, 'mass / g', kept on one line.</summary>
    private const string BeforeUnit = "\u00a0/\u00a0";

    public static void Write(StringBuilder page, ClassFindings findings)
    {
        string[] readings = [.. ReadingIds(findings)];
        QuantityDefinition[] shown = [.. Quantities(findings)];
        page.Append("<h2>Group by group</h2>\n<div class=\"scroll\"><table>\n<caption>Readings as written; values with the standard uncertainty that the balance leaves.")
            .Append(findings.Groups.Count > MostRows ? string.Create(CultureInfo.InvariantCulture, $" The first {MostRows} of {findings.Groups.Count} groups.") : string.Empty)
            .Append("</caption>\n<thead><tr><th scope=\"col\">group</th>");
        foreach (string id in readings)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\" class=\"n\">{Text.Of(LabelOf(findings.Practical, id))}</th>");
        }

        foreach (QuantityDefinition quantity in shown)
        {
            string unit = quantity.Unit == "1" ? string.Empty : $"{BeforeUnit}{quantity.Unit}";
            page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\" class=\"n\">{Text.Of(quantity.Label + unit)}</th>");
        }

        page.Append("<th scope=\"col\" class=\"reason\">remarks</th></tr></thead>\n<tbody>\n");
        foreach (GroupFindings group in findings.Groups.Take(MostRows))
        {
            WriteRow(page, group, readings, shown);
        }

        page.Append("</tbody>\n</table></div>\n");
    }

    private static void WriteRow(StringBuilder page, GroupFindings group, string[] readings, QuantityDefinition[] shown)
    {
        page.Append(group.IsAnomalous ? "<tr class=\"odd\">" : "<tr>")
            .Append(CultureInfo.InvariantCulture, $"<th scope=\"row\">{Text.Of(group.Name)}</th>");
        foreach (string id in readings)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td class=\"n\">{Text.Of(group.Readings.Find(id)?.Value.ToString() ?? "–")}</td>");
        }

        foreach (QuantityDefinition quantity in shown)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td class=\"n\">{Text.Of(group.Find(quantity.Id)?.Text ?? "–")}</td>");
        }

        page.Append(CultureInfo.InvariantCulture, $"<td class=\"reason\">{Text.Of(Remarks(group))}</td></tr>\n");
    }

    private static string Remarks(GroupFindings group)
    {
        var parts = new List<string>();
        if (group.IsAnomalous)
        {
            parts.Add($"Result to look into. {group.Oddity.Reason}");
        }
        else if (group.ConstantMass is ConstantMass mass)
        {
            parts.Add(char.ToUpperInvariant(mass.Brief[0]) + mass.Brief[1..] + ".");
        }

        parts.AddRange(group.Contradictions);
        if (group.Readings.Remarks.Observations.Count > 0)
        {
            parts.Add($"Noted: {string.Join("; ", group.Readings.Remarks.Observations)}.");
        }

        return string.Join(' ', parts);
    }

    private static IEnumerable<string> ReadingIds(ClassFindings findings)
    {
        TakenReading[] all = [.. findings.Groups.SelectMany(g => g.Readings.Readings.Concat(g.Readings.DerivedColumns))];
        string[] order = [.. findings.Practical.Readings.Select(r => r.Id), .. findings.Practical.Columns.Select(c => c.Id)];
        return all.Select(r => (r.Id, r.BaseId, r.Occurrence)).Distinct()
            .OrderBy(r => Array.IndexOf(order, r.BaseId)).ThenBy(r => r.Occurrence).Select(r => r.Id);
    }

    private static string LabelOf(Practical practical, string id)
    {
        string bare = id.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        ReadingDefinition? reading = practical.Readings.FirstOrDefault(r => r.Id == id) ?? practical.Readings.FirstOrDefault(r => r.Id == bare);
        ColumnDefinition? column = practical.FindColumn(id) ?? practical.FindColumn(bare);
        string label = reading is null ? column?.Label ?? id : reading.Id == id ? reading.Label : reading.RepeatLabel ?? reading.Label;
        return $"{label}{BeforeUnit}{reading?.Unit ?? column?.Unit ?? "g"}";
    }

    private static IEnumerable<QuantityDefinition> Quantities(ClassFindings findings)
    {
        FindingsDefinition asked = findings.Practical.Findings;
        string[] ids = [asked.Sample, asked.Change, asked.Key];
        return findings.Practical.Quantities.Where(q => ids.Contains(q.Id) && findings.Groups.Any(g => g.Find(q.Id) is not null));
    }
}
