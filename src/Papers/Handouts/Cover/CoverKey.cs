using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts.Cover;

/// <summary>The key to a cover lesson: every group's answers with what is accepted, which groups are odd and why, and what answers in words say. One side.</summary>
public static class CoverKey
{
    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        var lesson = new CoverLesson(setting);
        CoverTexts texts = lesson.Texts;
        SharedTexts shared = new(setting.Language);
        var answers = new CoverAnswers(setting.Practical, AtomicWeights.Iupac2024, lesson.Decimals);
        (CoverGroup Group, IReadOnlyList<CoverAnswer> Answers)[] worked = [.. lesson.Class.Groups.Select(g => (g, answers.Of(g.Readings)))];
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph(Phrase.Bold($"{texts.ForTeacher} ").Then(lesson.Origin)),
            new PaperBlock.Heading(lesson.IsShown ? texts.AnswersShownHeading : texts.AnswersHeading),
            new PaperBlock.Table(Answers(lesson, worked)),
            new PaperBlock.Paragraph(texts.Accepted, ParagraphLook.Small),
            new PaperBlock.Heading(lesson.IsShown ? texts.OddShownHeading : texts.OddHeading),
            .. Odd(lesson, shared),
            .. Questions(lesson, shared),
        ];
        return lesson.Paper("cover-key", texts.KeyTitle(setting.Practical.Title), content, setting.Look.Denser());
    }

    private static PaperTable Answers(CoverLesson lesson, (CoverGroup Group, IReadOnlyList<CoverAnswer> Answers)[] worked)
    {
        CoverTexts texts = lesson.Texts;
        if (lesson.IsShown)
        {
            IReadOnlyList<CoverAnswer> only = worked[0].Answers;
            return new PaperTable(
                [.. lesson.Asked.Select(a => new PaperColumn(Sentences.Heading(Text.Capital(a.Label), a.Unit), 1.4, IsNumber: true))],
                [[.. lesson.Asked.Select(a => (PaperCell)(only.FirstOrDefault(x => x.Answer == a) is CoverAnswer found ? Accepted(found, texts) : texts.NoAnswer))]]);
        }

        IEnumerable<PaperCell[]> rows = worked.Select(w => (PaperCell[])
        [
            new PaperCell(w.Group.Causes.Count > 0 ? texts.OddGroup(Sentences.Count(w.Group.Number)) : Sentences.Count(w.Group.Number), IsHeading: true),
            .. lesson.Asked.Select(a => (PaperCell)(w.Answers.FirstOrDefault(x => x.Answer == a) is CoverAnswer found ? Accepted(found, texts) : texts.NoAnswer)),
        ]);
        PaperCell[] middle =
        [
            new PaperCell(Phrase.Bold(texts.Middle), IsHeading: true),
            .. lesson.Asked.Select(a => new PaperCell(Phrase.Bold(Middle([.. worked.Select(w => w.Answers.FirstOrDefault(x => x.Answer == a)).OfType<CoverAnswer>()])))),
        ];
        return new PaperTable(
            [new(texts.GroupColumn, 0.8), .. lesson.Asked.Select(a => new PaperColumn(Sentences.Heading(Text.Capital(a.Label), a.Unit), 1.4, IsNumber: true))], [.. rows, middle]);
    }

    private static string Accepted(CoverAnswer answer, CoverTexts texts)
    {
        (string low, string high) = (Number(answer.Low, answer.Decimals), Number(answer.High, answer.Decimals));
        return answer.IsExact ? low : answer.Low < 0 ? texts.FromTo(low, high) : $"{low}–{high}";
    }

    /// <summary>The median: of an even number the mean of the two in the middle.</summary>
    private static string Middle(CoverAnswer[] answers)
    {
        double[] values = [.. answers.Select(a => a.Value).Order()];
        return values.Length == 0 ? "" : Number((values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2, answers[0].Decimals);
    }

    private static IEnumerable<PaperBlock> Odd(CoverLesson lesson, SharedTexts shared)
    {
        CoverGroup[] odd = [.. lesson.Class.Groups.Where(g => g.Causes.Count > 0)];
        yield return new PaperBlock.Paragraph(odd.Length == 0 ? lesson.IsShown ? lesson.Texts.NothingOdd : lesson.Texts.NoneOdd : lesson.Texts.OddKnown, ParagraphLook.Small);
        if (odd.Length > 0)
        {
            yield return new PaperBlock.Items(ListKind.Bullets, [.. odd.Select(g => Why(g, lesson, shared))]);
        }
    }

    private static Phrase Why(CoverGroup group, CoverLesson lesson, SharedTexts shared) => (lesson.IsShown ? Phrase.Of("") : Phrase.Bold($"{lesson.Texts.GroupLead(Sentences.Count(group.Number))} "))
        .Then(shared.Sentence(string.Join("; ", group.Causes.Select(c => $"{c.Fault.Label} ({Moved(c.MovedInGrams)}\u00a0g)"))));

    private static string Moved(double grams) => grams.ToString("+0.00#;−0.00#;0.00", CultureInfo.InvariantCulture);

    private static IEnumerable<PaperBlock> Questions(CoverLesson lesson, SharedTexts shared)
    {
        if (lesson.Questions.Count == 0)
        {
            yield break;
        }

        yield return new PaperBlock.Heading(lesson.Texts.AnswersInWordsHeading);
        foreach ((int index, SheetQuestion question) in lesson.Questions.Index())
        {
            yield return new PaperBlock.Paragraph(Phrase.Bold(FormattableString.Invariant($"{index + 1}  ")).Then(question.Ask, PhraseLook.Italic)
                .Then($" {string.Join(" ", question.Expected.Select((e, i) => $"({(char)('a' + i)})\u00a0{shared.Sentence(Text.Capital(e))}"))}"));
        }
    }

    private static string Number(double value, int? decimals) =>
        (decimals is int places ? value.ToString($"F{places}", CultureInfo.InvariantCulture) : AnswerFigures.Rounded(value)).Replace('-', '−');
}
