namespace Calx.Practicals.Readings;

/// <summary>How a heading was recognised, best first.</summary>
public enum MatchedBy
{
    /// <summary>The practical's own label or id, or one of the usual words for a column, unit and case aside.</summary>
    Label,

    /// <summary>One of the aliases the practical lists, unit and case aside.</summary>
    Alias,

    /// <summary>The same words in another order or form: weight for mass, heated for heating.</summary>
    Words,

    /// <summary>The same words but for a slip of spelling.</summary>
    Spelling,

    /// <summary>Some of its words, which fit no other reading.</summary>
    PartOfLabel,

    /// <summary>Its place: numbered headings taken in the practical's order, or a first column without a heading.</summary>
    Order,

    /// <summary>Not recognised.</summary>
    Nothing,
}
