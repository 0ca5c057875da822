namespace Calx.Practicals.Readings;

/// <summary>The rules by which a heading is recognised, the surest first.</summary>
internal enum HeadingRule
{
    Label,
    Alias,
    Words,
    Core,
    Spelling,
    PartEmpty,
    PartWhen,
    Part,
    Short,
}

/// <summary>One meaning that a heading could have.</summary>
/// <param name="Target">The meaning.</param>
/// <param name="Rule">The rule by which it was recognised.</param>
/// <param name="Number">The number of a repeat in the heading, or null.</param>
/// <param name="IsRepeat">Whether the phrase names the second weighing on.</param>
internal sealed record HeadingCandidate(HeadingTarget Target, HeadingRule Rule, int? Number, bool IsRepeat)
{
    /// <summary>The rule as reported.</summary>
    public MatchedBy MatchedBy => Rule switch
    {
        HeadingRule.Label => MatchedBy.Label,
        HeadingRule.Alias => MatchedBy.Alias,
        HeadingRule.Words or HeadingRule.Core => MatchedBy.Words,
        HeadingRule.Spelling => MatchedBy.Spelling,
        _ => MatchedBy.PartOfLabel,
    };

    /// <summary>Whether the rule leaves no doubt: the same words.</summary>
    public bool IsSure => Rule <= HeadingRule.Core;
}
