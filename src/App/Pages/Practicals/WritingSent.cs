using System.Security.Cryptography;
using System.Text;
using Calx.Practicals.Drafting;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Practicals;

/// <summary>What the page of a practical in writing sent: answers, the file's text, and the mark of the text that answers wrote last.</summary>
internal sealed record WritingSent(IReadOnlyDictionary<string, string> Answers, string Text, string Written, FormFields Fields)
{
    private const string Answered = "answer.";

    /// <summary>Characters of a practical's file; those of the program have 20 to 40 thousand.</summary>
    private const int LongestFile = 400_000;

    /// <summary>Whether the text is a person's: no answers came with it, or it is not the one that answers wrote.</summary>
    public bool IsByHand => Answers.Count == 0 || Written != MarkOf(Text);

    /// <summary>Reads what was sent.</summary>
    public static async Task<WritingSent> Of(HttpContext context)
    {
        FormFields fields = await FormFields.Of(context, LongestFile);
        return new WritingSent(AnswersOf(fields), TextOf(fields), fields["written"], fields);
    }

    /// <summary>The mark of a text that answers wrote. A browser may change its line ends, and those alone.</summary>
    public static string MarkOf(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\n").Trim())));

    private static Dictionary<string, string> AnswersOf(FormFields fields) =>
        Enum.GetValues<DraftFamily>().SelectMany(DraftQuestions.Of).Select(q => q.Key).Distinct()
            .Where(key => fields.Has(Answered + key)).ToDictionary(key => key, key => fields[Answered + key], StringComparer.Ordinal);

    /// <summary>A form's lines end as those of a browser do; a file's do not.</summary>
    private static string TextOf(FormFields fields) => fields["text"].ReplaceLineEndings("\n") is { Length: > 0 } text ? text + "\n" : "";
}
