namespace Calx.Chemistry.Elements;

/// <summary>
/// A chemical element, or one of the two isotopes that have a symbol of their own, D (²H) and T (³H). There is one
/// object for each: compare by reference.
/// </summary>
public sealed class Element
{
    internal Element(int index, int atomicNumber, string symbol, string name, StandardAtomicWeight standardWeight)
    {
        Index = index;
        AtomicNumber = atomicNumber;
        Symbol = symbol;
        Name = name;
        StandardWeight = standardWeight;
    }

    /// <summary>The 118 elements by atomic number; D and T are not among them.</summary>
    public static IReadOnlyList<Element> All => ElementTable.Elements;

    /// <summary>Hydrogen of mass number 2, written D.</summary>
    public static Element Deuterium => ElementTable.At(ElementTable.DeuteriumIndex);

    /// <summary>Hydrogen of mass number 3, written T.</summary>
    public static Element Tritium => ElementTable.At(ElementTable.DeuteriumIndex + 1);

    /// <summary>One or two letters, the first a capital: <c>Mg</c>.</summary>
    public string Symbol { get; }

    /// <summary>The English name in IUPAC's spelling, without a capital: <c>sulfur</c>.</summary>
    public string Name { get; }

    /// <summary>Number of protons, 1 to 118.</summary>
    public int AtomicNumber { get; }

    /// <summary>Whether this is D or T, an isotope with a symbol of its own.</summary>
    public bool IsIsotope => Index >= ElementTable.DeuteriumIndex;

    /// <summary>IUPAC's standard atomic weight as published; for D and T the atomic mass.</summary>
    public StandardAtomicWeight StandardWeight { get; }

    internal int Index { get; }

    /// <summary>The element with a symbol, capitals as they should be.</summary>
    /// <exception cref="ArgumentException">No element has the symbol: for text from users use
    /// <see cref="TryFind"/>.</exception>
    public static Element Of(string symbol)
        => TryFind(symbol, out Element? element)
            ? element
            : throw new ArgumentException($"There is no element with the symbol {symbol}.", nameof(symbol));

    /// <summary>Looks a symbol up, D and T included; <c>mg</c> is not <c>Mg</c>.</summary>
    /// <returns>False where no element has the symbol.</returns>
    public static bool TryFind(
        ReadOnlySpan<char> symbol, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Element? element)
    {
        int index = ElementTable.IndexOf(symbol);
        element = index < 0 ? null : ElementTable.At(index);
        return index >= 0;
    }

    /// <summary>The symbol.</summary>
    public override string ToString() => Symbol;
}
