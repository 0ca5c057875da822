namespace Calx.Practicals.Definition;

/// <summary>The causes that Calx knows by id, in data and in results.</summary>
public static class Causes
{
    /// <summary>Nothing moved the result by more than a group could see.</summary>
    public const string AsExpected = "as-expected";

    /// <summary>Every cause that a practical may name as a fault; <see cref="AsExpected"/> is none.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "not-all-reacted",
        "product-lost",
        "side-reaction",
        "tarnished-sample",
        "damp-vessel",
        "not-dry",
        "overheated",
        "regained-water",
        "weighed-warm",
        "part-left-off",
        "zero-shifted",
        "misread",
        "spilled",
        "extra-mass",
        "heat-lost",
        "gas-kept-back",
        "air-displaced",
        "not-sealed",
        "evaporated",
        "carried-over",
        "wrong-strength",
        "unsteady-current",
        "mistimed",
    ];
}
