using Calx.Practicals.Definition;

namespace Calx.Practicals.Choosing;

/// <summary>What a teacher looks for on the shelf; what is not said narrows nothing.</summary>
public sealed record ShelfWish
{
    /// <summary>A step written as 0.01 is the same as one worked out as 0.00999.</summary>
    private const double Slack = 1 + 1e-9;

    /// <summary>What happens.</summary>
    public PracticalFamily? Family { get; init; }

    /// <summary>The minutes at hand.</summary>
    public double? Minutes { get; init; }

    /// <summary>The smallest step of the balances at hand, in g.</summary>
    public double? StepInGrams { get; init; }

    /// <summary>Whether there is to be no naked flame.</summary>
    public bool NoFlame { get; init; }

    /// <summary>Whether there is no fume cupboard.</summary>
    public bool NoFumeCupboard { get; init; }

    /// <summary>Whether only what the teacher shows is wanted.</summary>
    public bool DemonstrationOnly { get; init; }

    /// <summary>Words that all are to stand in its title, its question, its id, or the names and formulas of its substances.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Whether everything is wanted.</summary>
    public bool IsEmpty => this is { Family: null, Minutes: null, StepInGrams: null, NoFlame: false, NoFumeCupboard: false, DemonstrationOnly: false, Words.Count: 0 };

    /// <summary>Whether a practical is among what is looked for.</summary>
    public bool Fits(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        if (IsEmpty)
        {
            return true;
        }

        var facts = PracticalFacts.Of(practical);
        return (Family is null || facts.Family == Family)
            && (Minutes is null || facts.Minutes.Shortest <= Minutes)
            && (StepInGrams is null || facts.CoarsestStepInGrams is null || StepInGrams <= facts.CoarsestStepInGrams * Slack)
            && !(NoFlame && facts.HasFlame)
            && !(NoFumeCupboard && facts.NeedsFumeCupboard)
            && (!DemonstrationOnly || facts.IsDemonstration)
            && Words.All(word => TextsOf(practical).Any(text => Folded(text).Contains(Folded(word), StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>A small figure is the same as a large one, and a hydrate's dot may be a full stop.</summary>
    private static string Folded(string text) => string.Concat(text.Select(c => c is >= '₀' and <= '₉' ? (char)('0' + (c - '₀')) : c == '·' ? '.' : c));

    private static IEnumerable<string> TextsOf(Practical practical) =>
    [
        practical.Title, practical.Question, practical.Id,
        .. practical.Materials.Select(m => m.Label), .. practical.Materials.Select(m => m.FormulaText).OfType<string>(),
    ];
}
