using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Judging;

/// <summary>What a student chooses from.</summary>
public static class JudgementChoices
{
    /// <summary>The reaction was complete.</summary>
    public const string Complete = "complete";

    /// <summary>It was not.</summary>
    public const string NotComplete = "not-complete";

    /// <summary>The weighings do not tell; of groups: too few to judge by.</summary>
    public const string CannotTell = "cannot-tell";

    /// <summary>No group, no cause.</summary>
    public const string None = "none";

    // Words that stand for a choice on paper. Common practice, no source.
    private static readonly Dictionary<string, string> Aliases = new(StringComparer.Ordinal)
    {
        ["yes"] = Complete,
        ["constantmass"] = Complete,
        ["finished"] = Complete,
        ["no"] = NotComplete,
        ["incomplete"] = NotComplete,
        ["notfinished"] = NotComplete,
        ["reheat"] = NotComplete,
        ["cannottell"] = CannotTell,
        ["can'ttell"] = CannotTell,
        ["asexpected"] = None,
        ["nothing"] = None,
        ["nogroup"] = None,
        ["noneofthem"] = None,
    };

    /// <summary>The choices, in the order in which they are shown. Empty for a formula, which is typed, and for the odd group, which is one of the class's groups
    /// or <see cref="None"/>.</summary>
    public static IReadOnlyList<Choice> Of(Practical practical, JudgementAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return answer switch
        {
            JudgementAnswer.OfCompleteness =>
            [
                new(Complete, MarkReasons.Texts.ChoiceComplete), new(NotComplete, MarkReasons.Texts.ChoiceNotComplete), new(CannotTell, MarkReasons.Texts.ChoiceCannotTell),
            ],
            JudgementAnswer.OfCause =>
            [
                .. practical.Faults.Select(f => new Choice(f.Cause, f.Label)), new(None, MarkReasons.Texts.ChoiceAsExpected),
            ],
            JudgementAnswer.OfImprovement => [.. practical.Faults.Where(f => f.Caution is not null).Select(f => new Choice(f.Cause, f.Caution!))],
            _ => [],
        };
    }

    /// <summary>The choice that an answer means: its id, its words, or a usual word for it; null where it is none of them.</summary>
    internal static string? Meant(IReadOnlyList<Choice> choices, string given)
    {
        string folded = Folded(given);
        return choices.FirstOrDefault(c => Folded(c.Id) == folded || Folded(c.Label) == folded)?.Id
            ?? (Aliases.TryGetValue(folded, out string? id) && choices.Any(c => c.Id == id) ? id : null);
    }

    /// <summary>Capitals, blanks, hyphens and the full stop make no other answer.</summary>
    internal static string Folded(string text) =>
        string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c is not ('-' or '–' or '.' or ',' or ':'))).ToLowerInvariant().Replace('’', '\'');
}
