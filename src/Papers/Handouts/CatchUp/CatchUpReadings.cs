using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>A student's readings, one heating after another: after each it is decided whether the group heats again before the next can be
/// seen. On a screen they open one after another; on paper what comes next is folded behind the sheet.</summary>
internal static class CatchUpReadings
{
    private const double RowInMillimetres = 7.5;
    private const int ReasonLines = 2;

    /// <summary>The readings, revealed step by step.</summary>
    public static IEnumerable<PaperBlock> Of(CatchUpSetting setting, CatchUpPack pack, CatchUpTexts texts)
    {
        if (pack.Decisions.Count == 0)
        {
            // Nothing is heated to constant mass, so that there is nothing to decide.
            yield return new PaperBlock.Heading(texts.ReadingsHeading);
            yield return Shown(setting, pack.Readings, texts);
            string[] between = [.. (pack.Series?.Points ?? []).Skip(1).SkipLast(1).Select(p => p.Value.ToString())];
            foreach (PaperBlock block in between.Length == 0 ? [] : SheetSeries.Table(setting.Practical, setting.Language, between)
                .Concat(SheetSeries.Squared(setting.Practical, setting.Language, numbered: true)))
            {
                yield return block;
            }

            yield break;
        }

        yield return new PaperBlock.Heading(texts.DecideHeading);
        yield return new PaperBlock.Paragraph(setting.IsDemonstration ? texts.AdviseStepByStep : texts.DecideStepByStep);

        IReadOnlyList<PaperBlock>[] steps = [.. Enumerable.Range(1, pack.Heatings).Select(h => (IReadOnlyList<PaperBlock>)[.. Step(setting, pack, h, texts)])];
        yield return new PaperBlock.FoldOver(steps, texts.Fold, texts.Reveal);
    }

    /// <summary>The table that the readings are put in, headed as in the lesson.</summary>
    public static IEnumerable<PaperBlock> Table(CatchUpSetting setting, CatchUpPack pack, CatchUpTexts texts)
    {
        yield return new PaperBlock.Heading(texts.TableHeading);
        var table = new PaperBlock.Table(new PaperTable(
            [new PaperColumn(texts.ReadingColumn, 3), new PaperColumn(texts.WrittenColumn, 1.2, IsNumber: true)],
            [.. pack.Readings.Select(r => (PaperCell[])[new(SheetReadings.Heading(setting.Practical, r.Weighing), RowInMillimetres, IsHeading: true), ""])],
            TableRuling.Framed));
        PaperBlock[] notes =
        [
            new PaperBlock.Paragraph(texts.FillIn),
            new PaperBlock.Paragraph(texts.Decimals(DecimalsInWords.Of(setting.Decimals, setting.Language.Engine))),
        ];
        if (setting.Look.IsLarge)
        {
            foreach (PaperBlock block in (PaperBlock[])[.. notes, table])
            {
                yield return block;
            }
        }
        else
        {
            yield return new PaperBlock.Beside([table], notes, leftShare: 0.68);
        }
    }

    private static IEnumerable<PaperBlock> Step(CatchUpSetting setting, CatchUpPack pack, int heating, CatchUpTexts texts)
    {
        IEnumerable<PackReading> shown = pack.Readings.Where(r => r.Weighing.Occurrence == heating);
        yield return new PaperBlock.Heading(
            heating == 1 ? texts.FirstStep : texts.Step(Sentences.Count(heating), Sentences.Count(pack.Heatings)), 2);
        yield return Shown(setting, shown, texts);
        bool isLast = heating == pack.Heatings;
        yield return new PaperBlock.Paragraph(isLast
            ? Phrase.Bold($"{texts.LastLead} ").Then(texts.Last)
            : Phrase.Bold($"{texts.DecideLead} ").Then(setting.IsDemonstration ? texts.Advise : texts.Decide));
        yield return new PaperBlock.Items(
            ListKind.Ticks,
            isLast
                ? [texts.TickStop, texts.TickMayChange, texts.TickLookLast]
                : [texts.TickReheat, texts.TickStop, texts.TickLook],
            columns: setting.Look.IsLarge ? 1 : 3);
        yield return new PaperBlock.Paragraph(texts.Because, ParagraphLook.Small);
        yield return new PaperBlock.WritingLines(ReasonLines);
    }

    private static PaperBlock.Table Shown(CatchUpSetting setting, IEnumerable<PackReading> readings, CatchUpTexts texts) => new(new PaperTable(
        [new PaperColumn(texts.ReadingColumn, 4), new PaperColumn(texts.ShownColumn, 1.6, IsNumber: true)],
        [.. readings.Select(r => (PaperCell[])[new(SheetReadings.Heading(setting.Practical, r.Weighing), IsHeading: true), new(Phrase.Bold(r.Displayed.ToString()))])]));
}
