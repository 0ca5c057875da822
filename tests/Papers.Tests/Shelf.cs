namespace Calx.Papers.Tests;

/// <summary>Which practicals a test of papers looks at.</summary>
internal static class Shelf
{
    /// <summary>A gain on heating, a loss, and a choice between equations: the three whose papers are proven line by line. What every
    /// practical's papers must have (sides, cautions, drawings) is asked of the whole shelf.</summary>
    public static readonly string[] Three = ["copper-sulfate-hydrate", "magnesium-oxide", "sodium-hydrogencarbonate"];

    /// <summary>Those with the most on their guided sheets, one of them with a curve: where these keep to their sides, the others do.</summary>
    public static readonly string[] Fullest = ["copper-by-iron", "hydrogen-peroxide"];
}
