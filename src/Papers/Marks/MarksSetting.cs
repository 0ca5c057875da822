using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Judging;
using Calx.Practicals.Marking.Prose;

namespace Calx.Papers.Marks;

/// <summary>What the table of marks and the slips are made from besides the marked class.</summary>
/// <param name="practical">The practical that was marked.</param>
/// <param name="occasion">Class and date.</param>
/// <param name="look">How they are printed; null for A4 with letters of usual size.</param>
public sealed class MarksSetting(Practical practical, PaperOccasion occasion, PaperLook? look = null)
{
    private readonly string[] questions = [.. practical.Sheet.Questions.OrderBy(q => q.Topic).Select(q => q.Id)];

    /// <summary>The practical.</summary>
    public Practical Practical { get; } = practical;

    /// <summary>Class and date.</summary>
    public PaperOccasion Occasion { get; } = occasion;

    /// <summary>How they are printed.</summary>
    public PaperLook Look { get; } = look ?? PaperLook.Usual;

    /// <summary>The language of their own texts.</summary>
    public PaperLanguage Language => Look.Language;

    /// <summary>Class and date in a line; empty where neither was said.</summary>
    internal string ClassAndDate => string.Join(" · ", new[] { Occasion.ClassName, Occasion.Date }.OfType<string>());

    /// <summary>The running heads. Nothing is handled after the lesson: they say nothing of a draft.</summary>
    /// <param name="kind">What kind of paper they stand on.</param>
    internal RunningHeads Heads(string kind)
    {
        SharedTexts texts = new(Language);
        string version = Sentences.Count(Practical.Version);
        string foot = Occasion.Printed is string day ? texts.FootOfPrintedPaper(Practical.Id, version, day) : texts.FootOfPaper(Practical.Id, version);
        return new RunningHeads(texts.HeadOfPaper(kind, Practical.Title), ClassAndDate, Occasion.IsInvented ? texts.FootOfInvented(foot) : foot, null);
    }

    /// <summary>The number that a question in words has on the student sheet.</summary>
    internal string NumberOf(ProseMark prose) => Sentences.Count(1 + Array.IndexOf(questions, prose.Question.Id));

    /// <summary>What was answered, as the student saw it: of a choice its words.</summary>
    internal string Given(AnswerMark mark) => Choice(mark, mark.Given)?.Label ?? mark.Given.Trim();

    /// <summary>What a judgement should have been, in the same words; null where that is not known.</summary>
    internal string? Expected(AnswerMark mark) => mark.ExpectedText is string expected ? Choice(mark, expected)?.Label ?? expected : null;

    /// <summary>The choice that was made, or null where something else was written.</summary>
    internal Choice? Choice(AnswerMark mark, string written) => mark.Answer is JudgementAnswer judgement
        ? JudgementChoices.Of(Practical, judgement).FirstOrDefault(c => string.Equals(c.Id, written.Trim(), StringComparison.OrdinalIgnoreCase)) : null;

    /// <summary>What was asked for, with its unit.</summary>
    internal static string Asked(AskedAnswer answer) => answer.Unit.Length == 0 ? answer.Label : Sentences.Heading(answer.Label, answer.Unit);
}
