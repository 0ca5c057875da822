namespace Calx.Practicals.Definition;

/// <summary>What students read of a practical on paper, besides its readings, answers and cautions.</summary>
public sealed class SheetDefinition
{
    internal SheetDefinition(IReadOnlyList<SheetStep> steps, IReadOnlyList<SheetStep> account, IReadOnlyList<SheetQuestion> questions, IReadOnlyList<string> words) =>
        (Steps, Account, Questions, Words) = (steps, account, questions, words);

    /// <summary>A practical without a sheet of its own: its steps are those of the lesson by their labels, and nothing is asked.</summary>
    public static SheetDefinition None { get; } = new([], [], [], []);

    /// <summary>What a group does, in order.</summary>
    public IReadOnlyList<SheetStep> Steps { get; }

    /// <summary>What a group did, in order, for those who were away: each goes on after 'each group'. Empty where it is told from the
    /// practical's events.</summary>
    public IReadOnlyList<SheetStep> Account { get; }

    /// <summary>Questions on the conclusion and on how far the data can be trusted.</summary>
    public IReadOnlyList<SheetQuestion> Questions { get; }

    /// <summary>Words of measurement and chemistry to write with.</summary>
    public IReadOnlyList<string> Words { get; }
}
