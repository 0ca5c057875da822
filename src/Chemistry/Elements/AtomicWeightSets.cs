using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Elements;

/// <summary>
/// The declared sets. The school sets are what tables for pupils print: rounded, and exact within the set. That
/// chlorine (35.5) and copper (63.5) keep a half among whole numbers, and argon 39.9 from its former value 39.948, is
/// common practice, no source.
/// </summary>
public static class AtomicWeightSets
{
    // Each set is made at its first use, once.
    private static readonly Lazy<AtomicWeights> Iupac = new(
        () => Make("iupac-2024", "IUPAC 2021 with the changes of 2024, with uncertainty", Uncertain));

    private static readonly Lazy<AtomicWeights>[] Rounded =
    [
        new(() => Make("iupac-abridged", "IUPAC's abridged values, taken as exact", w => Exact(Plain(w)))),
        new(() => Make("school-1dp", "rounded to one decimal: Mg 24.3, Cl 35.5, Cu 63.5, Ar 39.9", w => RoundedTo(w, 1),
            ("Ar", 39.9m))),
        new(() => Make("school-0dp", "whole numbers, but Cl 35.5 and Cu 63.5: Mg 24, Fe 56", w => RoundedTo(w, 0),
            ("Cl", 35.5m), ("Cu", 63.5m))),
        new(() => Make("school-0dp-cu64", "whole numbers, but Cl 35.5: Mg 24, Fe 56, Cu 64", w => RoundedTo(w, 0),
            ("Cl", 35.5m))),
    ];

    /// <summary>All sets, IUPAC's with uncertainty first.</summary>
    public static IReadOnlyList<AtomicWeights> All => [Iupac.Value, .. Rounded.Select(set => set.Value)];

    internal static AtomicWeights Iupac2024 => Iupac.Value;

    /// <summary>The set with a name, for instance <c>school-1dp</c>.</summary>
    /// <exception cref="ArgumentException">There is no such set; the message lists those there are.</exception>
    public static AtomicWeights Named(string name)
        => TryFind(name, out AtomicWeights? found)
            ? found
            : throw new ArgumentException(
                $"There is no set of atomic weights {name}; there are {string.Join(", ", All.Select(set => set.Name))}.",
                nameof(name));

    /// <summary>Looks a set up by its name.</summary>
    /// <returns>False where there is no such set.</returns>
    public static bool TryFind(
        string name, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out AtomicWeights? found)
    {
        found = All.FirstOrDefault(set => set.Name == name);
        return found is not null;
    }

    private static AtomicWeights Make(
        string name,
        string description,
        Func<Element, UncertainValue?> weightOf,
        params (string Symbol, decimal Weight)[] exceptions)
    {
        var weights = new UncertainValue?[ElementTable.Count];
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] = weightOf(ElementTable.At(i));
        }

        foreach ((string symbol, decimal weight) in exceptions)
        {
            weights[Element.Of(symbol).Index] = Exact(weight);
        }

        return new AtomicWeights(name, description, weights);
    }

    private static UncertainValue? Uncertain(Element element) => element.StandardWeight switch
    {
        StandardAtomicWeight.Interval range
            => Rectangular(element, (range.Low + range.High) / 2, (range.High - range.Low) / 2),
        StandardAtomicWeight.SingleValue single => Rectangular(element, single.Value, single.Uncertainty),
        _ => null,
    };

    // JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has standard uncertainty a/√3.
    private static UncertainValue Rectangular(Element element, decimal middle, decimal halfWidth)
        => UncertainValue.Of(
            $"atomic weight of {element.Name}", (double)middle, (double)halfWidth / Math.Sqrt(3));

    private static decimal? Plain(Element element) => element.StandardWeight switch
    {
        StandardAtomicWeight.Interval range => range.Abridged,
        StandardAtomicWeight.SingleValue single => single.Value,
        _ => null,
    };

    private static UncertainValue? RoundedTo(Element element, int decimals)
        => Plain(element) is { } weight ? Exact(Math.Round(weight, decimals, MidpointRounding.AwayFromZero)) : null;

    private static UncertainValue? Exact(decimal? weight)
        => weight is { } number ? UncertainValue.Exact((double)number) : null;
}
