using Calx.Papers.Reports;
using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
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
        Practical practical = setting.Practical;
        IReadOnlyList<ExpectedAnswer> answers = ExpectedAnswers.Of(setting.Plan, AtomicWeights.Iupac2024);
        int marks = practical.Answers.Sum(a => a.Marks) + practical.Sheet.Questions.Sum(q => q.Expected.Count);
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph("Every group is marked from its own readings: these are worked from the readings to expect, as an example. A wrong value that is rightly used further on earns the later marks."),
            new PaperBlock.Heading("Readings to expect"),
            new PaperBlock.Table(Readings(setting)),
            new PaperBlock.Heading("Worked values"),
            new PaperBlock.Table(Worked(setting, answers)),
            new PaperBlock.Paragraph(
                "‘Most groups’: 95 of 100 lie there, those among them in which something went wrong. A value outside is looked at, not marked wrong. A difference keeps the decimals of the balance; a product or quotient has the figures of its least certain factor, and is rounded once, at the end.",
                ParagraphLook.Small),
            .. KeyWrongAnswers.Of(setting),
            .. Questions(practical),
            new PaperBlock.Paragraph(Phrase.Bold(string.Create(CultureInfo.InvariantCulture, $"{marks} marks in all."))),
        ];
        return setting.Paper("answer-key", "Answer key", $"Answer key: {practical.Title}", content, setting.Look.Denser());
    }

    private static PaperTable Readings(PaperSetting setting)
    {
        PlanSettings plan = setting.Plan.Settings;
        int decimals = plan.Balances[0].Decimals;
        string Name(string id) => ReadingNames.Of(plan.Practical, id, plan.Practical.Reading(id).Repeats > 1 ? plan.Heatings : 1);
        KeyValuePair<string, double>[] readings = [.. ExpectedAnswers.ReadingsOf(setting.Plan)];
        return new PaperTable(
            [.. readings.Select(r => new PaperColumn(Sentences.Heading(Name(r.Key), plan.Practical.Reading(r.Key).Unit), 1))],
            [[.. readings.Select(r => new PaperCell(r.Value.ToString($"F{decimals}", CultureInfo.InvariantCulture)))]]);
    }

    private static PaperTable Worked(PaperSetting setting, IReadOnlyList<ExpectedAnswer> answers)
    {
        int decimals = setting.Plan.Settings.Balances[0].Decimals;
        return new PaperTable(
            [new("Answer", 3.1), new("How", 4.3), new("Value", 1, true), new("Most groups", 1.9, true), new("Marks", 0.7, true)],
            [
                .. answers.Select(a => (PaperCell[])
                [
                    new PaperCell(Sentences.Heading(Text.Capital(a.Answer.Label), a.Answer.Unit), IsHeading: true),
                    SheetWorkings.InWords(setting.Practical, a.Answer),
                    Number(a.Answer, a.Worked, decimals),
                    $"{Number(a.Answer, a.Low, decimals)} to {Number(a.Answer, a.High, decimals)}",
                    a.Answer.Marks.ToString(CultureInfo.InvariantCulture),
                ]),
            ]);
    }

    private static IEnumerable<PaperBlock> Questions(Practical practical)
    {
        if (practical.Sheet.Questions.Count == 0)
        {
            yield break;
        }

        yield return new PaperBlock.Heading("Answers in words: a mark each");
        int number = 0;
        foreach (SheetQuestion question in practical.Sheet.Questions.OrderBy(q => q.Topic))
        {
            number++;
            yield return new PaperBlock.Paragraph(Phrase.Bold(FormattableString.Invariant($"{number}  ")).Then(question.Ask));
            yield return new PaperBlock.Items(ListKind.Bullets, [.. question.Expected.Select(e => Phrase.Of($"{Text.Capital(e)}."))]);
        }
    }

    private static string Number(AnswerDefinition answer, double value, int decimals) => (AnswerFigures.Decimals(answer, value, decimals) is int places
        ? value.ToString($"F{places}", CultureInfo.InvariantCulture) : value.ToString("G3", CultureInfo.InvariantCulture)).Replace('-', '−');
}
