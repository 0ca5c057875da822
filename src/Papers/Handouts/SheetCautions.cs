using Calx.Papers.Reports;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>What a student takes care of, in a frame above the first step.</summary>
internal static class SheetCautions
{
    public static PaperBlock Of(PaperSetting setting)
    {
        StudentSheetTexts texts = new(setting.Language);
        SharedTexts shared = new(setting.Language);
        Practical practical = setting.Practical;
        var items = new List<Phrase>();
        string[] worn = [.. practical.Kit.Where(k => k.Need.Per == KitPer.Student).Select(k => k.Label)];
        if (worn.Length > 0)
        {
            items.Add(Phrase.Bold($"{texts.WornLead} ").Then(texts.Worn(Sentences.And(worn, setting.Language))));
        }

        if (practical.Cooling is not null)
        {
            items.Add(Phrase.Bold($"{texts.HotLead} ").Then(texts.Hot));
        }

        items.AddRange(Controls.Of(practical).Select(c => Phrase.Bold($"{shared.Lead(c.For)} ").Then(shared.Sentence(c.Done))));
        string[] stops = [.. practical.Observations.Where(o => o.Stop && !o.TeacherOnly).Select(o => o.Label)];
        if (stops.Length > 0)
        {
            items.Add(Phrase.Bold($"{texts.StopLead} ").Then(shared.Sentence(string.Join("; ", stops))));
        }

        return new PaperBlock.Panel(PanelKind.Caution, texts.CautionsHeading, [new PaperBlock.Items(ListKind.Bullets, items)]);
    }
}
