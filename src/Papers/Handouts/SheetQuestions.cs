using Calx.Papers.Documents;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>Questions that are answered in words, with lines to write on.</summary>
internal static class SheetQuestions
{
    public static IReadOnlyList<PaperBlock> Of(Practical practical, SupportLevel level)
    {
        if (practical.Sheet.Questions.Count == 0)
        {
            return [];
        }

        var blocks = new List<PaperBlock> { new PaperBlock.Heading("What it means") };
        if (level != SupportLevel.Open && practical.Sheet.Words.Count > 0)
        {
            blocks.Add(new PaperBlock.Panel(PanelKind.Help, "Words to use", [new PaperBlock.Paragraph(string.Join(" · ", practical.Sheet.Words))]));
        }

        int number = 0;
        foreach (SheetQuestion question in practical.Sheet.Questions.OrderBy(q => q.Topic))
        {
            number++;
            string marks = question.Expected.Count == 1 ? "1 mark" : FormattableString.Invariant($"{question.Expected.Count} marks");
            blocks.Add(new PaperBlock.Paragraph(Phrase.Bold(FormattableString.Invariant($"{number}  ")).Then(question.Ask).Then($" ({marks})", PhraseLook.Italic)));
            blocks.Add(new PaperBlock.WritingLines(question.Lines));
        }

        return blocks;
    }
}
