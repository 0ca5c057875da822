using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Papers.Handouts;
using Calx.Practicals.Readings;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>Every reading of one balance has the decimals that the balance shows, zeros at the end too; a difference of them keeps them.</summary>
internal static partial class DecimalsRule
{
    private static readonly string[] Words = ["no", "one", "two", "three", "four"];

    public static IEnumerable<SheetFinding> Of(CheckedSheet it)
    {
        Mass[] masses = [.. InTables(it), .. InTexts(it)];
        int shown = Decimals(it.StepInGrams);
        Mass[] wrong = [.. masses.Where(m => m.Decimals != shown)];
        // All alike: the balance is another one than was said, and it is enough to say so once.
        bool alike = wrong.Length > 1 && wrong.Length == masses.Length && wrong.All(m => m.Decimals == wrong[0].Decimals);
        string step = it.StepInGrams.ToString(CultureInfo.InvariantCulture);
        string expected = alike ? it.Texts.AllDecimalsExpected(DecimalsInWords.Of(shown, it.Language.Engine), step) : it.Texts.DecimalsExpected(DecimalsInWords.Of(shown, it.Language.Engine), step);
        IEnumerable<SheetFinding> ofMasses = wrong.Take(alike ? 1 : wrong.Length).Select(m => new SheetFinding("decimals", m.Place, m.Text, Problem(m), expected));
        return ofMasses.Concat(Instructions(it, shown, step));

        string Problem(Mass mass) => alike
            ? it.Texts.AllMassesDecimals(Sentences.Count(wrong.Length), DecimalsInWords.Of(mass.Decimals, it.Language.Engine)) : it.Texts.MassDecimals(DecimalsInWords.Of(mass.Decimals, it.Language.Engine));
    }

    private static IEnumerable<Mass> InTables(CheckedSheet it) =>
        from table in it.Tables
        from heading in table.Headings
        where heading.Named.Column is null or { Unit: "g" }
        let unit = table.UnitOf(heading) ?? "g"
        where unit is "g" or "mg" or "kg"
        from cell in table.CellsOf(heading)
        let number = NumberText.Read(cell.Text, new NumberExpectation("g", unit, mayBeNegative: true)) as NumberCell.Number
        where number is not null
        select new Mass(cell.Place.At(0, it.Language), Quoted.Whole(cell.Text), Decimals(number.LastDigit));

    // 'Mass of crucible = 24.3 g' in an example: a text in front of the number that names a reading.
    private static IEnumerable<Mass> InTexts(CheckedSheet it) =>
        from paragraph in it.Sheet.Paragraphs
        where (!paragraph.InTable || it.Tables.Count == 0) && paragraph.Text.AsSpan().IndexOfAny('=', ':') >= 0
        from Match match in Named().Matches(paragraph.Text)
        where it.Headings.Of(match.Groups["label"].Value.Trim()).Column is { Unit: "g" }
        let number = NumberText.Read(match.Groups["mass"].Value, new NumberExpectation()) as NumberCell.Number
        where number is not null
        select new Mass(paragraph.Place.At(match.Groups["mass"].Index, it.Language), Quoted.Whole(match.Value), Decimals(number.LastDigit));

    private static IEnumerable<SheetFinding> Instructions(CheckedSheet it, int shown, string step) =>
        from paragraph in it.Sheet.Paragraphs
        from sentence in Sentence().Matches(paragraph.Text)
        where OfMasses().IsMatch(sentence.Value) && !OfResults().IsMatch(sentence.Value)
        from Match match in Places().Matches(sentence.Value)
        let written = match.Groups["n"].Value.ToLowerInvariant()
        let decimals = int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : Array.IndexOf(Words, written)
        where decimals >= 0 && decimals != shown
        select new SheetFinding(
            "decimals", paragraph.Place.At(sentence.Index + match.Index, it.Language), Quoted.Whole(sentence.Value), it.Texts.InstructedDecimals(DecimalsInWords.Of(Math.Min(decimals, 28), it.Language.Engine)),
            it.Texts.InstructedDecimalsExpected(DecimalsInWords.Of(shown, it.Language.Engine), step));

    // Dividing by 1 written with all its zeros takes those of the number off.
    private static int Decimals(decimal lastDigit) => lastDigit >= 1 ? 0 : (lastDigit / 1.0000000000000000000000000000m).Scale;

    private sealed record Mass(string Place, string Text, int Decimals);

    [GeneratedRegex(@"(?<label>[^=:.;\n]{3,120}?)\s*[=:]\s*(?<mass>\d+([.,·]\d+)?\s*(g|mg|kg))\b", RegexOptions.CultureInvariant)]
    private static partial Regex Named();

    [GeneratedRegex(@"[^.!?;]+(\.(?=\d)[^.!?;]*)*", RegexOptions.CultureInvariant)]
    private static partial Regex Sentence();

    [GeneratedRegex(@"(?i)\b(mass(es)?|balance|weigh(ing|ings)?|readings?)\b", RegexOptions.CultureInvariant)]
    private static partial Regex OfMasses();

    [GeneratedRegex(@"(?i)\b(moles?|ratio|answers?|percent(age)?|relative|molar|formula|Ar|Mr|round)\b", RegexOptions.CultureInvariant)]
    private static partial Regex OfResults();

    [GeneratedRegex(@"(?i)\b(?<n>no|one|two|three|four|\d)\s+(decimals?\b|d\.\s?p\.|dp\b)", RegexOptions.CultureInvariant)]
    private static partial Regex Places();
}
