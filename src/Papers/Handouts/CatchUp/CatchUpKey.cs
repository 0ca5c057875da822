using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>The teacher's key to a class's packs: a row a student, with readings, the sensible decision after each heating and what was
/// planted; then the answers worked from each student's own readings, and the reasons.</summary>
public static class CatchUpKey
{
    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="packs">The packs, at least one.</param>
    public static Paper Of(CatchUpSetting setting, IReadOnlyList<CatchUpPack> packs)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(packs);
        CatchUpKeyTexts texts = new(setting.Language);
        bool decides = packs.Any(p => p.Decisions.Count > 0);
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph(texts.ForTeacher),
            .. decides ? (PaperBlock[])[new PaperBlock.Paragraph(texts.FirstHeating)] : [],
            new PaperBlock.Heading(texts.OverviewHeading),
            new PaperBlock.Paragraph(
                texts.ReadingsInOrder(string.Join("; ", packs[0].Readings.Select(r => SheetReadings.Heading(setting.Practical, r.Weighing)))), ParagraphLook.Small),
            new PaperBlock.Table(Overview(packs, texts)),
            new PaperBlock.Heading(texts.WorkedHeading),
            new PaperBlock.Paragraph(texts.Worked, ParagraphLook.Small),
            new PaperBlock.Table(Worked(setting, packs, texts)),
            .. decides ? (PaperBlock[])[new PaperBlock.Heading(texts.ReasonsHeading), new PaperBlock.Table(Reasons(packs, texts))] : [],
            .. AnswerKey.Questions(setting.Practical.Sheet.Questions, setting.Language),
        ];
        return setting.Paper(CatchUpNames.Key, texts.Kind, texts.Title(setting.Practical.Title), content, setting.Look.Denser());
    }

    private static PaperTable Overview(IReadOnlyList<CatchUpPack> packs, CatchUpKeyTexts texts) => new(
        [new(texts.StudentColumn, 1.4), new(texts.ReadingsColumn, 3), new(texts.SensibleColumn, 2.6), new(texts.PlantedColumn, 2.8)],
        [
            .. packs.Select(p => (PaperCell[])
            [
                new PaperCell(p.Student.Name, IsHeading: true),
                string.Join("; ", p.Readings.Select(r => r.Displayed.ToString())),
                string.Join("; ", p.Decisions.Select(d => FormattableString.Invariant($"{d.Heating} {DecisionWords.Of(d, texts)}"))),
                Planted(p.Truth, texts),
            ]),
        ]);

    private static string Planted(PackTruth truth, CatchUpKeyTexts texts) => !truth.IsOdd ? texts.NothingPlanted : string.Join("; ", truth.Planted.Select(
        c => $"{c.Label} ({(c.MovedInGrams < 0 ? "−" : "+")}{Figures.Text(Math.Abs(c.MovedInGrams), 3)}\u00a0g)"));

    private static PaperTable Worked(CatchUpSetting setting, IReadOnlyList<CatchUpPack> packs, CatchUpKeyTexts texts)
    {
        AnswerDefinition[] answers = [.. packs.SelectMany(p => p.Answers).Select(a => a.Answer).DistinctBy(a => a.Id)];
        return new PaperTable(
            [
                new(texts.StudentColumn, 1.5), new(texts.StoppedColumn, 0.8),
                .. answers.Select(a => new PaperColumn(Sentences.Heading(Text.Capital(a.Label), a.Unit), IsExact(a, packs) ? 1 : 1.7, IsNumber: true)),
            ],
            [
                .. packs.SelectMany(p => Enumerable.Range(1, p.Heatings).Select(h => (PaperCell[])
                [
                    new PaperCell(p.Student.Name, IsHeading: true),
                    h.ToString(CultureInfo.InvariantCulture),
                    .. answers.Select(a => Value(setting, p.Answers.FirstOrDefault(w => w.Heating == h && w.Answer.Id == a.Id), h == p.SensibleHeatings, texts)),
                ])),
            ]);
    }

    /// <summary>Whether it is a difference of readings, in which nothing is rounded.</summary>
    private static bool IsExact(AnswerDefinition answer, IReadOnlyList<CatchUpPack> packs) =>
        packs.SelectMany(p => p.Answers).Where(a => a.Answer.Id == answer.Id).All(a => a.Low == a.High);

    private static PaperCell Value(CatchUpSetting setting, PackAnswer? worked, bool isSensible, CatchUpKeyTexts texts)
    {
        if (worked is null)
        {
            return "–";
        }

        (string value, string low, string high) = (Number(worked.Value), Number(worked.Low), Number(worked.High));
        Phrase said = isSensible ? Phrase.Bold(value) : Phrase.Of(value);
        return new PaperCell(low == high ? said : said.Then($" {texts.Between(low, high)}"));

        // All three with the figures of the value, so that they can be compared at a glance.
        string Number(double number) => (AnswerFigures.Decimals(worked.Answer, worked.Value, setting.Decimals, setting.Plan.Practical) is int places
            ? number.ToString($"F{places}", CultureInfo.InvariantCulture) : AnswerFigures.Rounded(number)).Replace('-', '−');
    }

    private static PaperTable Reasons(IReadOnlyList<CatchUpPack> packs, CatchUpKeyTexts texts) => new(
        [new(texts.StudentColumn, 1.6), new(texts.AfterColumn, 0.6), new(texts.DecisionColumn, 1.5), new(texts.WhyColumn, 5)],
        [
            .. packs.SelectMany(p => p.Decisions.Select(d => (PaperCell[])
            [
                new PaperCell(p.Student.Name, IsHeading: true), d.Heating.ToString(CultureInfo.InvariantCulture), DecisionWords.Of(d, texts), d.Why,
            ])),
        ]);
}
