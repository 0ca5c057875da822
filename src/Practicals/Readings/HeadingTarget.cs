namespace Calx.Practicals.Readings;

/// <summary>Something a heading can mean, with the phrases that mean it.</summary>
internal sealed class HeadingTarget
{
    public HeadingTarget(
        string name, ExpectedColumn? column, ColumnMeaning? said, IReadOnlyList<HeadingPhrase> phrases, bool many = false)
    {
        Name = name;
        Column = column;
        Said = said;
        Phrases = phrases;
        MayBeMany = many || column is { Repeats: > 1 };
        Vocabulary = phrases.SelectMany(p => p.Text.Core).ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The label, for messages.</summary>
    public string Name { get; }

    /// <summary>The expected column of numbers, or null.</summary>
    public ExpectedColumn? Column { get; }

    /// <summary>The meaning where it is no column of numbers, or null.</summary>
    public ColumnMeaning? Said { get; }

    public IReadOnlyList<HeadingPhrase> Phrases { get; }

    /// <summary>Whether more than one column may mean it.</summary>
    public bool MayBeMany { get; }

    /// <summary>All words of its phrases.</summary>
    public IReadOnlySet<string> Vocabulary { get; }

    /// <summary>Whether numbers with this unit can be meant.</summary>
    public bool Admits(string? unit) => unit is null || Column is null
        || ReadingUnits.Fits(unit, HeadingUnit.Usual(Column.Unit));
}

/// <summary>One phrase that means a target.</summary>
/// <param name="Text">The phrase taken apart.</param>
/// <param name="IsLabel">Whether it is the label or the id, not an alias.</param>
/// <param name="IsRepeat">Whether it names the second weighing on.</param>
internal sealed record HeadingPhrase(HeadingText Text, bool IsLabel, bool IsRepeat);
