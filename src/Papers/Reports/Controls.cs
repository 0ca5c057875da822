using Calx.Practicals.Definition;

namespace Calx.Papers.Reports;

/// <summary>What a practical's hazards are met with, each control once with all that it is for.</summary>
internal static class Controls
{
    /// <summary>The controls in the order of the practical: what they are for, with a capital, and what is done.</summary>
    public static IEnumerable<(string For, string Done)> Of(Practical practical) => practical.Hazards.GroupBy(h => h.Control, StringComparer.Ordinal)
        .Select(same => (Text.Capital(string.Join(", ", same.Select(h => h.Of))), same.Key));
}
