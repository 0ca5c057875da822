using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Papers.Slips;

/// <summary>The table of a record slip: a row for every time a reading may be taken, with a box for each digit.</summary>
internal sealed class SlipTable
{
    /// <summary>More repeats than this would not leave room for a second slip on the page.</summary>
    private const int MostRepeats = 3;

    /// <summary>Vessels differ from school to school: as much heavier than the heaviest usual one still has a box.</summary>
    private const double HeavierVessel = 1.5;

    private readonly Practical practical;
    private readonly SlipSettings settings;
    private readonly RecordSlipTexts texts;
    private readonly bool warm;

    public SlipTable(Practical practical, SlipSettings settings, RecordSlipTexts texts)
    {
        this.practical = practical;
        this.settings = settings;
        this.texts = texts;
        warm = practical.Cooling is not null;
        Html = Table();
    }

    /// <summary>The table.</summary>
    public string Html { get; }

    private string Table()
    {
        string[] columns = [texts.ReadingColumn, texts.DigitsColumn, .. warm ? [texts.CoolingColumn] : (string[])[], texts.OtherBalanceColumn];
        StringBuilder table = new StringBuilder("<table>\n<thead><tr>")
            .AppendJoin(string.Empty, columns.Select(c => $"<th scope=\"col\">{Text.Of(c)}</th>")).Append("</tr></thead>\n<tbody>\n");
        foreach (ReadingDefinition reading in practical.Readings.Where(r => !settings.Unread.Contains(r.Id)))
        {
            for (int time = 1; time <= Math.Min(MostRepeats, reading.Repeats); time++)
            {
                WriteRow(table, reading, ReadingNames.Of(practical, reading.Id, time));
            }
        }

        return table.Append(CultureInfo.InvariantCulture, $"</tbody>\n<tfoot><tr><td colspan=\"{columns.Length}\">{Text.Of(texts.WriteAll)}")
            .Append("<span class=\"room\"></span></td></tr></tfoot>\n</table>\n").Append(Times()).ToString();
    }

    /// <summary>Mass against time: a box under each time, as many in a line as fit.</summary>
    private string Times()
    {
        const int inLine = 7;
        if (practical.Series is not SeriesDefinition series)
        {
            return string.Empty;
        }

        var lines = new StringBuilder(string.Create(
            CultureInfo.InvariantCulture, $"<h3>{Text.Of(texts.Times(series.Label, series.TimeUnit))}</h3>\n<table class=\"times\">\n"));
        foreach (double[] times in series.TimesInMinutes.Skip(1).SkipLast(1).Chunk(inLine))
        {
            lines.Append("<tr>").AppendJoin(string.Empty, times.Select(t => $"<td><small>{series.TimeText(t)}</small></td>")).Append("</tr>\n");
        }

        return lines.Append("</table>\n").ToString();
    }

    private void WriteRow(StringBuilder table, ReadingDefinition reading, string name)
    {
        bool balance = reading.Instrument == Instrument.Balance;
        table.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{Text.OfSentence(name)}\u00a0/\u00a0{Text.Of(reading.Unit)}</th>")
            .Append(CultureInfo.InvariantCulture, $"<td class=\"digits\">{(balance ? Boxes(reading) : "<span class=\"line\"></span>")}</td>");
        if (warm)
        {
            table.Append(practical.Cooling!.Reading == reading.Id ? "<td><span class=\"box\"></span></td>" : "<td class=\"none\">–</td>");
        }

        table.Append(balance ? "<td><span class=\"box\"></span></td></tr>\n" : "<td class=\"none\">–</td></tr>\n");
    }

    private string Boxes(ReadingDefinition reading)
    {
        const string box = "<span class=\"digit\"></span>";
        string whole = string.Concat(Enumerable.Repeat(box, WholeDigits(reading)));
        return settings.Decimals == 0
            ? whole : $"{whole}<span class=\"point\">.</span>{string.Concat(Enumerable.Repeat(box, settings.Decimals))}";
    }

    /// <summary>Digits before the point for the heaviest load of this reading.</summary>
    private int WholeDigits(ReadingDefinition reading)
    {
        double vessel = practical.Parts.Where(p => reading.Pan.Parts.Contains(p.Id)).Sum(p => p.Mass.High);
        double most = (HeavierVessel * vessel) + practical.Limits.LargestSample;
        return Math.Max(1, (int)Math.Floor(Math.Log10(Math.Max(1, most))) + 1);
    }
}
