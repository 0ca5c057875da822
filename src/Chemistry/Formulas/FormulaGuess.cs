using System.Text;
using Calx.Chemistry.Elements;

namespace Calx.Chemistry.Formulas;

/// <summary>
/// What a formula with wrong capitals may mean: <c>mgo</c>, <c>NACL</c>, <c>Cuso4</c>. Each run of letters is cut into
/// symbols without regard to capitals, the cheapest cuts first: common elements cost little, rare ones much, and a
/// letter whose case must change costs a little more. The costs are judgement.
/// </summary>
internal static class FormulaGuess
{
    private const int Kept = 3;
    private const int Common = 10;
    private const int Known = 13;
    private const int Rare = 40;
    private const int CaseChange = 1;

    // Elements of a school's formulas.
    private const string CommonSymbols =
        " H C N O F Na Mg Al Si P S Cl K Ca Fe Cu Zn Br Ag I Ba Pb Mn Cr ";

    private const string KnownSymbols =
        " Li Be B He Ne Ar Sc Ti V Ni Ga Ge As Se Kr Rb Sr Y Zr Mo Cd Sn Sb Te Xe Cs W Pt Au Hg Bi U D ";

    // Cobalt costs more than carbon and oxygen together: co2 is CO2, not Co2.
    private const int Cobalt = 22;

    /// <summary>The likeliest meaning that can be read and differs from the text, or null.</summary>
    public static string? Best(ReadOnlySpan<char> text) => Ranked(text) is [string first, ..] ? first : null;

    /// <summary>Up to three meanings that can be read, the likeliest first.</summary>
    public static IReadOnlyList<string> Ranked(ReadOnlySpan<char> text)
    {
        string written = text.Trim().ToString();
        int body = written.Length - StateLength(written);
        List<Cut> cuts = [new Cut("", 0)];
        for (int start = 0; start < body;)
        {
            int end = start;
            while (end < body && char.IsAsciiLetter(written[end]))
            {
                end++;
            }

            cuts = end > start
                ? Best(cuts, SymbolsOf(written[start..end]))
                : [.. cuts.Select(cut => new Cut(cut.Text + written[start], cut.Cost))];
            start = Math.Max(end, start + 1);
        }

        string tail = written[body..];
        return [.. cuts
            .Select(cut => cut.Text + tail)
            .Where(guess => guess != written && FormulaParser.Read(guess, null, 0, suggest: false).Succeeded)];
    }

    private static int StateLength(string written)
    {
        int open = written.LastIndexOf('(');
        return open > 0 && FormulaCharacters.StateAt(written.AsSpan(open), out int length) != MatterState.NotSaid
            && open + length == written.Length ? length : 0;
    }

    // The cheapest cuts of each beginning of the run, from those of shorter beginnings.
    private static List<Cut> SymbolsOf(string run)
    {
        var upTo = new List<Cut>[run.Length + 1];
        upTo[0] = [new Cut("", 0)];
        for (int end = 1; end <= run.Length; end++)
        {
            upTo[end] = [];
            for (int length = 1; length <= Math.Min(2, end); length++)
            {
                upTo[end].AddRange(Extended(upTo[end - length], run.AsSpan(end - length, length)));
            }

            upTo[end] = Cheapest(upTo[end]);
        }

        return upTo[^1];
    }

    private static IEnumerable<Cut> Extended(List<Cut> cuts, ReadOnlySpan<char> letters)
    {
        string symbol = letters.Length == 1
            ? char.ToUpperInvariant(letters[0]).ToString()
            : $"{char.ToUpperInvariant(letters[0])}{char.ToLowerInvariant(letters[1])}";
        if (ElementTable.IndexOf(symbol) < 0)
        {
            return [];
        }

        int cost = CostOf(symbol) + (symbol[0] == letters[0] ? 0 : CaseChange)
            + (symbol.Length == 2 && symbol[1] != letters[1] ? CaseChange : 0);
        return cuts.Select(cut => new Cut(cut.Text + symbol, cut.Cost + cost));
    }

    private static int CostOf(string symbol)
        => symbol == "Co" ? Cobalt
        : CommonSymbols.Contains($" {symbol} ", StringComparison.Ordinal) ? Common
        : KnownSymbols.Contains($" {symbol} ", StringComparison.Ordinal) ? Known
        : Rare;

    private static List<Cut> Best(List<Cut> before, List<Cut> behind)
        => Cheapest([.. before.SelectMany(a => behind.Select(b => new Cut(a.Text + b.Text, a.Cost + b.Cost)))]);

    private static List<Cut> Cheapest(List<Cut> cuts)
        => [.. cuts.OrderBy(cut => cut.Cost).ThenBy(cut => cut.Text, StringComparer.Ordinal).Take(Kept)];

    private readonly record struct Cut(string Text, int Cost);
}
