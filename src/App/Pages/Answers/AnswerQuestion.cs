using System.Globalization;
using Calx.App.Live;
using Calx.Practicals.Marking.Written;
using Calx.Records.Journal;

namespace Calx.App.Pages.Answers;

/// <summary>One question as students' pages ask it: nothing in it tells what is expected.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Kind">How it is answered.</param>
/// <param name="Label">Its name.</param>
/// <param name="Ask">The question as a sentence; empty for a value.</param>
/// <param name="Unit">The unit of a value where headings have units; empty for none, and where students are asked for units.</param>
/// <param name="Choices">What there is to choose.</param>
public sealed record AnswerQuestion(string Id, AnswerKind Kind, string Label, string Ask, string Unit, IReadOnlyList<AnswerChoice> Choices)
{
    /// <summary>Characters of an answer in words: two pages of a phone, more than any sheet has lines for.</summary>
    public const int LongestWords = 2000;

    /// <summary>Characters of a number or formula: longer texts are essays.</summary>
    public const int LongestShort = 60;

    /// <summary>What it is in the journal.</summary>
    public string What => Acts.AnswerPrefix + Id;

    /// <summary>What is wrong with an answer, or null. What can be read is kept, right or wrong.</summary>
    public string? Fault(string text, string? unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        int longest = Kind == AnswerKind.Words ? LongestWords : LongestShort;
        return text.Length == 0 ? "Nothing is written: an empty answer is nothing to keep."
            : text.Length > longest ? TooLong(text.Length, longest)
            : unit?.Length > EntryContent.LongestName ? "The unit is too long."
            : Kind == AnswerKind.Choice && Choices.All(c => c.Id != text) ? "That is none of the answers to choose from."
            : Kind == AnswerKind.Value ? NumberFault(text) : null;
    }

    /// <summary>An answer as it is shown to the student who gave it.</summary>
    public string Shown(EntryContent.Answer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Kind == AnswerKind.Choice ? Choices.FirstOrDefault(c => c.Id == answer.Text)?.Label ?? answer.Text
            : answer.Unit is string unit ? $"{answer.Text}\u00a0{unit}" : answer.Text;
    }

    private string TooLong(int length, int longest) => string.Create(
        CultureInfo.InvariantCulture,
        $"That has {length:#,0} characters; {(Kind == AnswerKind.Words ? "at most" : Kind == AnswerKind.Value ? "a number was expected, of at most" : "a formula was expected, of at most")} {longest:#,0} are kept.");

    private static string? NumberFault(string text) => AnswerText.Read(text) switch
    {
        AnswerText.Number => null,
        AnswerText.Unreadable { Reason: string reason } => $"{char.ToUpperInvariant(reason[0])}{reason[1..]}. Write it as 0.24, 9.9 x 10^-3, 1 : 1.13 or 7/8.",
        _ => "Nothing is written: a number is expected.",
    };
}
