using System.Globalization;
using Calx.App.Output;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Judging;
using Calx.Practicals.Marking.Values;

namespace Calx.App.Pages.Marking;

/// <summary>What is said of an answer, in the teacher's words.</summary>
internal static class VerdictWords
{
    /// <summary>Figures of an expected value: more than a school's readings give.</summary>
    private const int Figures = 4;

    /// <summary>A clause: right, carried forward, wrong with its reason, and so on; figures and unit behind it.</summary>
    public static string Of(AnswerMark mark)
    {
        string said = mark.Verdict switch
        {
            Verdict.Right => "right",
            Verdict.Carried => "right from an earlier value that is wrong: carried forward",
            Verdict.RoundedEarly => "right way, rounded too far before the end",
            Verdict.Wrong { Reason: string reason } => $"wrong: {reason}",
            Verdict.Wrong => "wrong",
            Verdict.Missing => "nothing handed in",
            Verdict.Unreadable unreadable => $"cannot be read: {unreadable.Reason}",
            Verdict.CannotMark cannot => $"cannot be marked: {cannot.Reason}",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return string.Join("; ", new[] { said, mark.Figures == FiguresFault.None ? null : Of(mark.Figures), mark.HasWrongUnit ? "unit wrong or missing" : null }.OfType<string>());
    }

    /// <summary>A sign in the table of all marks, with what it means; null for an answer that is plainly right or wrong.</summary>
    public static (string Sign, string Meaning)? Sign(AnswerMark mark) => mark switch
    {
        { Overruled: not null } => ("*", "marked by you"),
        { Verdict: Verdict.Carried } => ("c", "carried forward"),
        { Verdict: Verdict.RoundedEarly } => ("r", "rounded early"),
        { Verdict: Verdict.Unreadable or Verdict.CannotMark } => ("?", "to be looked at"),
        { Verdict: Verdict.Missing } => ("–", "nothing handed in"),
        _ => null,
    };

    /// <summary>What was given, in words: of a choice what the student read, and nothing said as such.</summary>
    public static string Given(AnswerMark mark, Practical practical) => (mark.Given, mark.Answer) switch
    {
        ("", _) => "nothing",
        (string group, JudgementAnswer.OfOddGroup) when int.TryParse(group, NumberStyles.None, CultureInfo.InvariantCulture, out _) => $"group {group}",
        (string given, JudgementAnswer judgement) => JudgementChoices.Of(practical, judgement).FirstOrDefault(c => c.Id == given)?.Label ?? given,
        (string given, _) => given,
    };

    /// <summary>What was expected, with its unit; null where that cannot be said.</summary>
    public static string? Expected(AnswerMark mark) => mark.ExpectedText ?? (mark.Expected is double value ? WithUnit(value, mark.Answer.Unit) : null);

    /// <summary>What the own earlier values give, with its unit; null where that is the expected value or cannot be said.</summary>
    public static string? Own(AnswerMark mark) =>
        mark.Own is double own && mark.Expected is double value && WithUnit(own, mark.Answer.Unit) is { } text && text != WithUnit(value, mark.Answer.Unit) ? text : null;

    /// <summary>A share as people say it; what is not nothing is not 0.</summary>
    public static string Percent(double share) => share is > 0 and < 0.005 ? "under 1 %" : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    private static string WithUnit(double value, string unit) => unit is "" or "1" ? Figure.Significant(value, Figures) : $"{Figure.Significant(value, Figures)} {unit}";

    private static string Of(FiguresFault figures) => figures == FiguresFault.TooFew ? "too few figures" : "more figures than the readings give";
}
