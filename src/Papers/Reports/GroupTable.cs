using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Papers.Reports;

/// <summary>The report's table of groups: readings as written, what follows from them, and what to look into.</summary>
internal sealed class GroupTable(ClassFindings findings, ReportView view)
{
    private readonly ReportTexts texts = new(view.Language);
    private readonly GroupNames names = GroupNames.Of(findings, view);

    /// <summary>A printed report of thousands of rows helps nobody; the JSON document has them all.</summary>
    private const int MostRows = 500;

    /// <summary>Quantity calculus, 'mass / g', kept on one line.</summary>
    private const string BeforeUnit = "\u00a0/\u00a0";

    /// <summary>In em of the table.</summary>
    private const int WidestName = 9;

    /// <summary>With more columns than this a printed page is turned.</summary>
    private const int MostUpright = 10;

    public void Write(StringBuilder page)
    {
        (string BaseId, int Occurrence)[] readings = [.. Readings()];
        QuantityDefinition[] shown = [.. Quantities()];
        bool heated = findings.Groups.Any(g => g.ConstantMass is not null);
        int columns = readings.Length + shown.Length + (heated ? 1 : 0);
        string more = findings.Groups.Count > MostRows
            ? $" {texts.FirstGroups(MostRows.ToString(CultureInfo.InvariantCulture), findings.Groups.Count.ToString(CultureInfo.InvariantCulture))}" : string.Empty;
        page.Append(columns > MostUpright ? "<section class=\"wide\">\n" : "<section>\n")
            .Append(CultureInfo.InvariantCulture, $"<h2 id=\"groups\">{Text.Own(texts.GroupsHeading)}</h2>\n<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"groups\"><table class=\"groups\">\n")
            .Append(CultureInfo.InvariantCulture, $"<caption>{Text.Own(texts.GroupsNote + more)}</caption>\n")
            .Append(CultureInfo.InvariantCulture, $"<thead><tr><th scope=\"col\" class=\"name-{WidthOfNames()}\">{Text.Own(texts.GroupColumn)}</th>");
        foreach ((string id, int occurrence) in readings)
        {
            Heading(page, ReadingNames.Of(findings.Practical, id, occurrence), ReadingNames.UnitOf(findings.Practical, id));
        }

        foreach (QuantityDefinition quantity in shown)
        {
            Heading(page, quantity.Label, quantity.Unit);
        }

        page.Append(heated ? $"<th scope=\"col\" class=\"words\">{Text.Own(texts.ConstantMassColumn)}</th>" : string.Empty).Append("</tr></thead>\n");
        foreach (GroupFindings group in findings.Groups.Take(MostRows))
        {
            WriteGroup(page, group, readings, shown, heated);
        }

        page.Append("</table></div>\n</section>\n");
    }

    /// <summary>Enough for the longest name, in whole em, within reason: a name of one long word breaks rather than widening
    /// the page.</summary>
    private int WidthOfNames()
    {
        double widest = findings.Groups.Take(MostRows).Select(g => TextWidth.Of(names[g], size: 1)).DefaultIfEmpty().Max();
        return Math.Clamp((int)Math.Ceiling(widest + 1), 3, WidestName);
    }

    private static void Heading(StringBuilder page, string label, string unit) => page.Append(
        CultureInfo.InvariantCulture, $"<th scope=\"col\" class=\"n\">{Text.Of(unit == "1" ? label : label + BeforeUnit + unit)}</th>");

    /// <summary>A row of numbers and, where there is something to say, a row of words under it: the table stays narrow
    /// enough for paper.</summary>
    private void WriteGroup(
        StringBuilder page, GroupFindings group, (string BaseId, int Occurrence)[] readings, QuantityDefinition[] shown, bool heated)
    {
        string remarks = view.Causes ? Remarks(group) : string.Empty;
        page.Append(view.Causes && group.IsAnomalous ? "<tbody class=\"odd\">" : "<tbody>")
            .Append("<tr><th scope=\"rowgroup\"").Append(remarks.Length > 0 ? " rowspan=\"2\"" : string.Empty)
            .Append(CultureInfo.InvariantCulture, $">{Text.Of(names[group])}</th>");
        foreach ((string id, int occurrence) in readings)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td class=\"n\">{Reading(group.Readings.Find(TakenReading.IdOf(id, occurrence)))}</td>");
        }

        foreach (QuantityDefinition quantity in shown)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td class=\"n\">{Text.Of(group.Find(quantity.Id)?.Text ?? "–")}</td>");
        }

        if (heated)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td class=\"words\">{Text.OfSentence((view.Causes ? group.ConstantMassInWords : group.ConstantMassVerdictInWords) ?? "–")}</td>");
        }

        page.Append("</tr>\n");
        if (remarks.Length > 0)
        {
            int across = readings.Length + shown.Length + (heated ? 1 : 0);
            page.Append(CultureInfo.InvariantCulture, $"<tr><td class=\"remarks\" colspan=\"{across}\"><p>{remarks}</p></td></tr>\n");
        }

        page.Append("</tbody>\n");
    }

    /// <summary>The number in the heading's unit; where it was written in another, that is said too.</summary>
    private string Reading(TakenReading? reading)
    {
        if (reading is null)
        {
            return "–";
        }

        string number = reading.Value.ToString();
        string digits = number.Contains('.', StringComparison.Ordinal) ? number.TrimEnd('0').TrimEnd('.') : number;
        bool same = reading.AsWritten.Trim().Replace(',', '.').StartsWith(digits, StringComparison.Ordinal);
        return same ? Text.Of(number) : $"{Text.Of(number)}<br/><small>{texts.WrittenAs(Text.Of(reading.AsWritten.Trim()))}</small>";
    }

    private string Remarks(GroupFindings group)
    {
        var parts = new List<string>();
        if (group.IsAnomalous)
        {
            parts.Add($"<strong>{Text.Own(texts.LookInto)}</strong> {Text.OfSentence(group.Oddity.Reason)}");
        }

        parts.AddRange(group.Contradictions.Select(Text.OfSentence));
        if (group.Readings.Remarks.Observations.Count > 0)
        {
            parts.Add(Text.Of(texts.Noted(string.Join("; ", group.Readings.Remarks.Observations.Select(Seen)))));
        }

        return string.Join(' ', parts);
    }

    /// <summary>What was tapped in a lesson comes as the practical's id and is said in its words; what was written stays as written.</summary>
    private string Seen(string observation) => findings.Practical.Observations.FirstOrDefault(o => o.Id == observation)?.Label ?? observation;

    private IEnumerable<(string BaseId, int Occurrence)> Readings()
    {
        string[] order = [.. findings.Practical.Readings.Select(r => r.Id), .. findings.Practical.Columns.Select(c => c.Id)];
        return findings.Groups.SelectMany(g => g.Readings.Readings.Concat(g.Readings.DerivedColumns))
            .Select(r => (r.BaseId, r.Occurrence)).Distinct()
            .OrderBy(r => Array.IndexOf(order, r.BaseId)).ThenBy(r => r.Occurrence);
    }

    private IEnumerable<QuantityDefinition> Quantities()
    {
        FindingsDefinition asked = findings.Practical.Findings;
        string[] ids = [asked.Sample, asked.Change, asked.Key];
        return findings.Practical.Quantities.Where(q => ids.Contains(q.Id) && findings.Groups.Any(g => g.Find(q.Id) is not null));
    }
}
