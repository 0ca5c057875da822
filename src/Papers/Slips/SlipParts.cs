using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Slips;

/// <summary>What is the same on all slips of a practical: cautions, the table for the readings, what may be seen.</summary>
internal sealed class SlipParts
{
    public SlipParts(Practical practical, SlipSettings settings, PaperLanguage language)
    {
        RecordSlipTexts texts = new(language);
        Title = Text.Of(practical.Title);
        Cautions = CautionsOf(practical, texts);
        Readings = new SlipTable(practical, settings, texts).Html;
        Observations = ObservationsOf(practical, texts);
    }

    /// <summary>The practical's title.</summary>
    public string Title { get; }

    /// <summary>What each hazard is met with, and what everybody wears.</summary>
    public string Cautions { get; }

    /// <summary>The table to be filled in.</summary>
    public string Readings { get; }

    /// <summary>What was seen, to be ticked; what stops all work apart from the rest.</summary>
    public string Observations { get; }

    private static string CautionsOf(Practical practical, RecordSlipTexts texts)
    {
        string[] worn = [.. practical.Kit.Where(k => k.Need.Per == KitPer.Student).Select(k => k.Label)];
        var list = new StringBuilder("<ul class=\"cautions\">\n");
        if (worn.Length > 0)
        {
            list.Append(CultureInfo.InvariantCulture, $"<li><strong>{Text.Of(texts.EverybodyLead)}</strong> {Text.OfSentence(string.Join(", ", worn))}</li>\n");
        }

        if (practical.Cooling is not null)
        {
            list.Append(CultureInfo.InvariantCulture, $"<li><strong>{Text.Of(texts.HotLead)}</strong> {Text.Of(texts.Hot)}</li>\n");
        }

        foreach ((string of, string done) in Controls.Of(practical))
        {
            list.Append(CultureInfo.InvariantCulture, $"<li><strong>{Text.OfSentence(of)}:</strong> {Text.OfSentence(done)}</li>\n");
        }

        return list.Append("</ul>\n").ToString();
    }

    private static string ObservationsOf(Practical practical, RecordSlipTexts texts)
    {
        Observation[] shown = [.. practical.Observations.Where(o => !o.TeacherOnly)];
        var list = new StringBuilder();
        WriteTicks(list, texts.SeenHeading, "seen", [.. shown.Where(o => !o.Stop)]);
        WriteTicks(list, texts.StopHeading, "stop", [.. shown.Where(o => o.Stop)]);
        return list.ToString();
    }

    private static void WriteTicks(StringBuilder list, string heading, string kind, Observation[] observations)
    {
        if (observations.Length == 0)
        {
            return;
        }

        list.Append(CultureInfo.InvariantCulture, $"<section class=\"{kind}\">\n<h3>{Text.Of(heading)}</h3>\n<ul>\n");
        foreach (Observation observation in observations)
        {
            list.Append(CultureInfo.InvariantCulture, $"<li><span class=\"tick\"></span>{Text.OfSentence(observation.Label)}</li>\n");
        }

        list.Append("</ul>\n</section>\n");
    }
}
