using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>Questions that are answered in words, with lines to write on.</summary>
internal static class SheetQuestions
{
    public static IReadOnlyList<PaperBlock> Of(Practical practical, IReadOnlyList<SheetQuestion> questions, SupportLevel level, StudentSheetTexts texts)
    {
        if (questions.Count == 0)
        {
            return [];
        }

        var blocks = new List<PaperBlock> { new PaperBlock.Heading(texts.QuestionsHeading) };
        if (level != SupportLevel.Open && practical.Sheet.Words.Count > 0)
        {
            blocks.Add(new PaperBlock.Panel(PanelKind.Help, texts.WordsHeading, [new PaperBlock.Paragraph(string.Join(" · ", practical.Sheet.Words))]));
        }

        int number = 0;
        foreach (SheetQuestion question in questions.OrderBy(q => q.Topic))
        {
            number++;
            string marks = question.Expected.Count == 1 ? texts.OneMark : texts.Marks(Sentences.Count(question.Expected.Count));
            blocks.Add(new PaperBlock.Paragraph(Phrase.Bold(FormattableString.Invariant($"{number}  ")).Then(question.Ask).Then($" {marks}", PhraseLook.Italic)));
            blocks.Add(new PaperBlock.WritingLines(question.Lines));
        }

        return blocks;
    }
}
