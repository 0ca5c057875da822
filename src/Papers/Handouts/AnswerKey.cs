using Calx.Papers.Reports;
using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts;

/// <summary>The teacher's key: each answer worked from the readings to expect, where answers of most groups lie, and what an answer in words says, a mark each. One side.</summary>
public static class AnswerKey
{
    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        AnswerKeyTexts texts = new(setting.Language);
        Practical practical = setting.Practical;
        IReadOnlyList<ExpectedAnswer> answers = ExpectedAnswers.Of(setting.Plan, AtomicWeights.Iupac2024);
        int marks = practical.Answers.Sum(a => a.Marks) + setting.Plan.Settings.Questions.Sum(q => q.Expected.Count);
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph(texts.OwnReadings),
            new PaperBlock.Heading(texts.ReadingsHeading),
            new PaperBlock.Table(Readings(setting)),
            new PaperBlock.Heading(texts.WorkedHeading),
            new PaperBlock.Table(Worked(setting, texts, answers)),
            new PaperBlock.Paragraph(texts.RangeNote, ParagraphLook.Small),
            .. KeyWrongAnswers.Of(setting, texts),
            .. Questions(setting.Plan.Settings.Questions, setting.Language),
            new PaperBlock.Paragraph(Phrase.Bold(marks == 1 ? texts.OneMarkInAll : texts.MarksInAll(Sentences.Count(marks)))),
        ];
        return setting.Paper("answer-key", texts.Kind, texts.Title(practical.Title), content, setting.Look.Denser());
    }

    private static PaperTable Readings(PaperSetting setting)
    {
        PlanSettings plan = setting.Plan.Settings;
        int decimals = plan.Balances[0].Decimals;
        string Name(string id) => ReadingNames.Of(plan.Practical, id, plan.Practical.Reading(id).Repeats > 1 ? plan.Heatings : 1);
        KeyValuePair<string, double>[] readings = [.. ExpectedAnswers.ReadingsOf(setting.Plan)];
        return new PaperTable(
            [.. readings.Select(r => new PaperColumn(Sentences.Heading(Name(r.Key), plan.Practical.Reading(r.Key).Unit), 1))],
            [[.. readings.Select(r => new PaperCell(r.Value.ToString($"F{plan.Practical.Reading(r.Key).Errors?.Step.Decimals ?? decimals}", CultureInfo.InvariantCulture)))]]);
    }

    private static PaperTable Worked(PaperSetting setting, AnswerKeyTexts texts, IReadOnlyList<ExpectedAnswer> answers)
    {
        int decimals = setting.Plan.Settings.Balances[0].Decimals;
        return new PaperTable(
            [new(texts.AnswerColumn, 3.1), new(texts.HowColumn, 4.3), new(texts.ValueColumn, 1, true), new(texts.MostGroupsColumn, 1.9, true), new(texts.MarksColumn, 0.7, true)],
            [
                .. answers.Select(a => (PaperCell[])
                [
                    new PaperCell(Sentences.Heading(Text.Capital(a.Answer.Label), a.Answer.Unit), IsHeading: true),
                    SheetWorkings.InWords(setting.Practical, a.Answer, setting.Language),
                    Number(setting.Practical, a.Answer, a.Worked, decimals),
                    texts.Range(Number(setting.Practical, a.Answer, a.Low, decimals), Number(setting.Practical, a.Answer, a.High, decimals)),
                    a.Answer.Marks.ToString(CultureInfo.InvariantCulture),
                ]),
            ]);
    }

    internal static IEnumerable<PaperBlock> Questions(IReadOnlyList<SheetQuestion> questions, PaperLanguage language)
    {
        if (questions.Count == 0)
        {
            yield break;
        }

        yield return new PaperBlock.Heading(new AnswerKeyTexts(language).QuestionsHeading);
        SharedTexts shared = new(language);
        int number = 0;
        foreach (SheetQuestion question in questions.OrderBy(q => q.Topic))
        {
            number++;
            yield return new PaperBlock.Paragraph(Phrase.Bold(FormattableString.Invariant($"{number}  ")).Then(question.Ask));
            yield return new PaperBlock.Items(ListKind.Bullets, [.. question.Expected.Select(e => Phrase.Of(shared.Sentence(Text.Capital(e))))]);
        }
    }

    private static string Number(Practical practical, AnswerDefinition answer, double value, int decimals) => (AnswerFigures.Decimals(answer, value, decimals, practical) is int places
        ? value.ToString($"F{places}", CultureInfo.InvariantCulture) : AnswerFigures.Rounded(value)).Replace('-', '−');
}
