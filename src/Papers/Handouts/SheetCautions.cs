using Calx.Papers.Reports;
using Calx.Papers.Documents;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>What a student takes care of, in a frame above the first step.</summary>
internal static class SheetCautions
{
    public static PaperBlock Of(PaperSetting setting)
    {
        Practical practical = setting.Practical;
        var items = new List<Phrase>();
        string[] worn = [.. practical.Kit.Where(k => k.Need.Per == KitPer.Student).Select(k => k.Label)];
        if (worn.Length > 0)
        {
            items.Add(Phrase.Bold("Everybody: ").Then($"{Sentences.And(worn)}, from the first step to the last."));
        }

        if (practical.Cooling is not null)
        {
            items.Add(Phrase.Bold("Hot things: ").Then("tongs and mat every time. Nobody tests by touch."));
        }

        items.AddRange(Controls.Of(practical).Select(c => Phrase.Bold($"{c.For}: ").Then($"{c.Done}.")));
        string[] stops = [.. practical.Observations.Where(o => o.Stop && !o.TeacherOnly).Select(o => o.Label)];
        if (stops.Length > 0)
        {
            items.Add(Phrase.Bold("Stop, stand back and tell your teacher at once if: ").Then($"{string.Join("; ", stops)}."));
        }

        return new PaperBlock.Panel(PanelKind.Caution, "Take care", [new PaperBlock.Items(ListKind.Bullets, items)]);
    }
}
