using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>Relative atomic and formula masses and molar masses that differ from IUPAC's by more than the rounding that they are written with,
/// whether the sum was rounded or the atomic masses were.</summary>
internal static partial class AtomicMassRule
{
    public static IEnumerable<SheetFinding> Of(CheckedSheet it) => InTexts(it).Concat(it.Sheet.Tables.SelectMany(table => InTable(it, table)));

    private static IEnumerable<SheetFinding> InTexts(CheckedSheet it) =>
        from paragraph in it.Sheet.Paragraphs
        where Speaks().IsMatch(paragraph.Text)
        from Match match in Pair().Matches(paragraph.Text)
        where !OfAnotherQuantity().IsMatch(paragraph.Text[Math.Max(0, match.Index - 24)..match.Index])
        let finding = Judge(it, match.Groups["what"].Value, match.Groups["value"].Value, paragraph.Place.At(match.Index, it.Language), match.Value)
        where finding is not null
        select finding;

    /// <summary>A column or row headed Ar or Mr, with formulas or names at the other edge.</summary>
    private static IEnumerable<SheetFinding> InTable(CheckedSheet it, SheetTable table)
    {
        foreach (SheetCell heading in table.Rows.Take(1).SelectMany(r => r).Where(c => c.Column > 1 && Speaks().IsMatch(c.Text)))
        {
            foreach (SheetFinding finding in table.Column(heading.Column).Where(c => c.Row > 1).Select(c => JudgeCell(it, table.At(c.Row, 1), c)).OfType<SheetFinding>())
            {
                yield return finding;
            }
        }

        foreach (SheetCell heading in table.Rows.Skip(1).Select(r => r.Count > 0 ? r[0] : null).OfType<SheetCell>().Where(c => Speaks().IsMatch(c.Text)))
        {
            foreach (SheetFinding finding in table.Rows[heading.Row - 1].Where(c => c.Column > 1).Select(c => JudgeCell(it, table.At(1, c.Column), c)).OfType<SheetFinding>())
            {
                yield return finding;
            }
        }
    }

    private static SheetFinding? JudgeCell(CheckedSheet it, SheetCell? what, SheetCell value) =>
        what is not null && Number().IsMatch(value.Text) ? Judge(it, what.Text.Trim(), value.Text.Trim(), value.Place.At(0, it.Language), value.Text) : null;

    private static SheetFinding? Judge(CheckedSheet it, string what, string value, string place, string text)
    {
        if (what is "Ar" or "Mr" || !WrittenNumber.TryParse(value.Replace(',', '.').Replace('·', '.'), out WrittenNumber written) || FormulaOf(what) is not Formula formula
            || formula.FindMolarMass(AtomicWeights.Iupac2024) is not { Succeeded: true, Value: UncertainValue mass } || IsRight(written, formula, mass))
        {
            return null;
        }

        string right = Math.Round(mass.Value, Math.Min(written.Decimals, 3), MidpointRounding.AwayFromZero).ToString("F" + Math.Min(written.Decimals, 3), CultureInfo.InvariantCulture);
        return new SheetFinding("atomic-mass", place, Quoted.Whole(text), it.Texts.AtomicMass(formula.ToUnicode(), written.ToString()), it.Texts.AtomicMassExpected(right));
    }

    private static bool IsRight(WrittenNumber written, Formula formula, UncertainValue mass)
    {
        double half = 0.5 * Math.Pow(10, -written.Decimals);
        // Of a rectangular law half the width is √3 standard uncertainties: IUPAC's interval for normal materials.
        return Math.Abs(written.AsDouble - mass.Value) <= half + (Math.Sqrt(3) * mass.StandardUncertainty) + 1e-9
            || AtomicWeightSets.All.Skip(1).Any(set => formula.FindMolarMass(set) is { Succeeded: true, Value: UncertainValue rounded } && Math.Abs(written.AsDouble - rounded.Value) <= half + 1e-9);
    }

    private static Formula? FormulaOf(string what)
    {
        what = Symbol().Replace(what, "");
        Element? named = Element.All.FirstOrDefault(e => e.Name.Equals(what, StringComparison.OrdinalIgnoreCase));
        return Formula.Parse(named?.Symbol ?? what) is { Succeeded: true, Value: Formula formula } ? formula : null;
    }

    [GeneratedRegex(@"\b[AM]_?\{?r\b|[AM]ᵣ|(?i:relative (atomic|formula|molecular) mass|molar mass|atomic (mass|weight)|\bg\s?/\s?mol\b|\bg mol)|\bM\([A-Z]", RegexOptions.CultureInvariant)]
    private static partial Regex Speaks();

    // What, then its value: not the first number of a sum, nor a mass in g, nor an amount in mol.
    [GeneratedRegex(@"(?<![A-Za-z0-9])(?<what>[A-Z][A-Za-z0-9()·.₀-₉]{0,30}?|[a-z]{3,12})\)?\s{0,3}(=|:|\bis\b|\bhas\b|,|\s)\s{0,3}([\d.+×*x() ]{1,80}=\s{0,3})?(?<value>\d{1,4}([.,]\d{1,4})?)(?![\d.]*\d|\s*[+×*x%/–-]|\s*(m?g|kg|mol|cm|min\w*|s|°C|moles?)\b(?!\s?(/|mol)))", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();

    [GeneratedRegex(@"(?i)(?<!molar |atomic |formula |molecular )\b(moles?|mol|amount|mass|number|grams?|g)\s+(of\s+)?$|\bn\($|[+×*/]\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex OfAnotherQuantity();

    // Ar(Mg), Mr(MgO), M(Mg)
    [GeneratedRegex(@"^[AM]r?\(", RegexOptions.CultureInvariant)]
    private static partial Regex Symbol();

    [GeneratedRegex(@"^\s*\d{1,4}([.,·]\d{1,4})?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
