using System.Globalization;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;
using Calx.Practicals.Marking.Values;

namespace Calx.Papers.Marks;

/// <summary>What is said of an answer, and what may lie behind it, in words for the teacher.</summary>
internal sealed class VerdictWords(PaperLanguage language)
{
    /// <summary>Less is none in a hundred.</summary>
    private const double LeastSaid = 0.005;

    private readonly MarksTexts texts = new(language);

    /// <summary>The texts that they are taken from.</summary>
    public MarksTexts Texts => texts;

    /// <summary>The verdict, and what is wrong with figures and unit of an accepted answer.</summary>
    public string Of(AnswerMark mark) => string.Join("; ", new[]
    {
        Said(mark.Verdict),
        mark.IsAccepted && mark.Figures == FiguresFault.TooFew ? texts.TooFewFigures : mark.IsAccepted && mark.Figures == FiguresFault.TooMany ? texts.TooManyFigures : null,
        mark.HasWrongUnit ? texts.WrongUnit : null,
        mark.Overruled is Overruling own ? texts.Overruled(Sentences.Count(own.Marks), Sentences.Count(mark.ComputedMarks)) : null,
    }.OfType<string>());

    /// <summary>The same of an answer in words.</summary>
    public string Of(ProseMark prose) => prose.IsWaiting ? texts.VerdictWaiting : prose.Text.Length == 0 ? texts.VerdictMissing : texts.VerdictMarkedByYou;

    /// <summary>Candidates with their probabilities; empty for an answer that is not wrong.</summary>
    public string Behind(AnswerMark mark, Practical practical) => mark.Ideas is null ? string.Empty : string.Join("; ",
    [
        .. mark.Ideas.Candidates.Select(c => texts.Candidate(Sentences.And([.. c.Ideas.Select(i => i.Label)], language), PerCent(c.Probability))),
        .. mark.Ideas.SomethingElse >= LeastSaid ? [texts.SomethingElse(PerCent(mark.Ideas.SomethingElse))] : Array.Empty<string>(),
        .. mark.Ideas.TellApart is string id ? [texts.WouldTell(practical.AllAnswers.First(a => a.Id == id).Label)] : Array.Empty<string>(),
    ]);

    /// <summary>Words of measurement that do not say what is meant.</summary>
    public string Misused(ProseMark prose) => string.Join("; ", prose.Words.Where(w => w.IsMisused).Select(w =>
        texts.Misused(prose.Text.Substring(w.Start, w.Length), w.Advice ?? string.Empty)));

    private string Said(Verdict verdict) => verdict switch
    {
        Verdict.Right => texts.VerdictRight,
        Verdict.Carried => texts.VerdictCarried,
        Verdict.RoundedEarly => texts.VerdictRoundedEarly,
        Verdict.Wrong => texts.VerdictWrong,
        Verdict.Missing => texts.VerdictMissing,
        Verdict.Unreadable => texts.VerdictUnreadable,
        Verdict.CannotMark => texts.VerdictCannotMark,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string PerCent(double share) => (100 * share).ToString("0", CultureInfo.InvariantCulture);
}
