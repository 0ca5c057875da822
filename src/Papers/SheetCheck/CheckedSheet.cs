using Calx.Papers.SheetCheck.Rules;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Papers.SheetCheck;

/// <summary>A worksheet held against the rules for a practical (docs/methods/sheet-check.md).</summary>
public sealed class CheckedSheet
{
    /// <summary>In g: the step of the balance where nothing else is said.</summary>
    public const decimal UsualStepInGrams = 0.01m;

    private CheckedSheet(Sheet sheet, Practical practical, decimal stepInGrams, PaperLanguage language)
    {
        Sheet = sheet;
        Practical = practical;
        StepInGrams = stepInGrams;
        Language = language;
        Texts = new SheetCheckTexts(language);
        Headings = new HeadingNames(ExpectedTable.Of(practical));
        Tables = [.. sheet.Tables.Select(t => HeadedTable.Of(t, Headings)).OfType<HeadedTable>()];
    }

    internal Sheet Sheet { get; }

    internal Practical Practical { get; }

    /// <summary>Smallest step of the balance, in g.</summary>
    internal decimal StepInGrams { get; }

    /// <summary>The language of what is said about the sheet; what is looked for in it is English.</summary>
    internal PaperLanguage Language { get; }

    /// <summary>What can be said.</summary>
    internal SheetCheckTexts Texts { get; }

    internal HeadingNames Headings { get; }

    /// <summary>The tables whose headings name quantities.</summary>
    internal IReadOnlyList<HeadedTable> Tables { get; }

    /// <summary>What there is to look at, by rule and then from the top of the sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="practical">The practical that it is for.</param>
    /// <param name="stepInGrams">Smallest step of the balance, in g, above 0.</param>
    /// <param name="language">The language of what is said; null for British English. The sheet itself is read as English.</param>
    public static IReadOnlyList<SheetFinding> Findings(
        Sheet sheet, Practical practical, decimal stepInGrams = UsualStepInGrams, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stepInGrams);
        var it = new CheckedSheet(sheet, practical, stepInGrams, language ?? PaperLanguage.BritishEnglish);
        return
        [
            .. WeightRule.Of(it), .. LooseWordRule.Of(it), .. UnitRule.Of(it), .. DecimalsRule.Of(it), .. MissingReadingRule.Of(it),
            .. CautionRule.Of(it), .. EquationRule.Of(it), .. AtomicMassRule.Of(it),
        ];
    }
}
