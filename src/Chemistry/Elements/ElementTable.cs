using System.Globalization;

namespace Calx.Chemistry.Elements;

/// <summary>The embedded table elements.txt, read once at the first question, and the look-up by symbol.</summary>
internal static class ElementTable
{
    /// <summary>Place of D; T follows; the elements stand before, each at its atomic number less one.</summary>
    public const int DeuteriumIndex = 118;

    /// <summary>Elements and isotopes together.</summary>
    public const int Count = DeuteriumIndex + 2;

    // A symbol is a capital and perhaps a small letter: 26 x 27 places, so a look-up is one step.
    private const int PlacesPerCapital = 27;

    private static readonly Element[] Table = Read();
    private static readonly short[] Places = Arrange(Table);

    public static IReadOnlyList<Element> Elements { get; } = Table[..DeuteriumIndex];

    public static Element At(int index) => Table[index];

    /// <summary>Place of a symbol in the table, or -1.</summary>
    public static int IndexOf(ReadOnlySpan<char> symbol) => symbol.Length switch
    {
        1 => IndexOf(symbol[0]),
        2 => IndexOf(symbol[0], symbol[1]),
        _ => -1,
    };

    /// <summary>Place of a symbol of one letter, or -1.</summary>
    public static int IndexOf(char capital)
        => char.IsAsciiLetterUpper(capital) ? Places[(capital - 'A') * PlacesPerCapital] : -1;

    /// <summary>Place of a symbol of two letters, or -1.</summary>
    public static int IndexOf(char capital, char small)
        => char.IsAsciiLetterUpper(capital) && char.IsAsciiLetterLower(small)
            ? Places[((capital - 'A') * PlacesPerCapital) + small - 'a' + 1]
            : -1;

    private static short[] Arrange(Element[] table)
    {
        short[] places = new short[26 * PlacesPerCapital];
        Array.Fill(places, (short)-1);
        foreach (Element element in table)
        {
            int small = element.Symbol.Length > 1 ? element.Symbol[1] - 'a' + 1 : 0;
            places[((element.Symbol[0] - 'A') * PlacesPerCapital) + small] = (short)element.Index;
        }

        return places;
    }

    private static Element[] Read()
    {
        using Stream stream = typeof(ElementTable).Assembly.GetManifestResourceStream("elements.txt")
            ?? throw new InvalidOperationException("The table of the elements is missing from the library.");
        using var lines = new StreamReader(stream);
        var elements = new Element[Count];
        int read = 0;
        while (lines.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
            {
                elements[read] = ElementOf(read, line.Split(' '));
                read++;
            }
        }

        return read == Count ? elements : throw new InvalidOperationException($"The table has {read} elements.");
    }

    private static Element ElementOf(int index, string[] cells)
        => new(index, int.Parse(cells[0], CultureInfo.InvariantCulture), cells[1], cells[2], WeightOf(cells));

    private static StandardAtomicWeight WeightOf(string[] cells)
    {
        string weight = cells[3];
        if (weight == "-")
        {
            return new StandardAtomicWeight.NotDefined();
        }

        if (weight[0] != '[')
        {
            (decimal value, decimal uncertainty) = ValueOf(weight);
            return new StandardAtomicWeight.SingleValue(value, uncertainty);
        }

        int comma = weight.IndexOf(',', StringComparison.Ordinal);
        (decimal abridged, decimal abridgedUncertainty) = ValueOf(cells[4]);
        return new StandardAtomicWeight.Interval(
            Number(weight[1..comma]), Number(weight[(comma + 1)..^1]), abridged, abridgedUncertainty);
    }

    // 63.546(3): the digits in brackets count units of the last decimal.
    private static (decimal Value, decimal Uncertainty) ValueOf(string text)
    {
        int bracket = text.IndexOf('(', StringComparison.Ordinal);
        decimal value = Number(text[..bracket]);
        int units = int.Parse(text[(bracket + 1)..^1], CultureInfo.InvariantCulture);
        return (value, new decimal(units, 0, 0, isNegative: false, value.Scale));
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
