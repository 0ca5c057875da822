using Calx.Practicals.Definition;

namespace Calx.Practicals.Texts;

/// <summary>
/// Where a practical needs other words than most: those for drying in place of heating, for rounds in which nothing reacts, for the mass
/// of a product in place of a change. A manner is a second file of a topic, with its name behind the topic's
/// (<c>AdviceTexts.drying.resx</c>), that holds only the texts that differ.
/// </summary>
public static class Manners
{
    /// <summary>The manners in which a practical is spoken of, the more particular last; mostly none.</summary>
    public static IReadOnlyList<string> Of(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ConstantMassDefinition? rule = practical.Findings.ConstantMass;
        return
        [
            .. rule is { LeastConversion: null } ? new[] { "dryness" } : [],
            .. rule is { By: RoundsBy.Drying } ? new[] { "drying" } : [],
            .. practical.WeighsProduct ? new[] { "product" } : [],
        ];
    }
}
