using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;

namespace Calx.Papers.Spreadsheets;

/// <summary>Molar masses that the formulas call by name, and the balance's smallest step.</summary>
internal static class ConstantsSheet
{
    /// <summary>Name of the cell with the decimals that the balance shows.</summary>
    public const string DecimalsName = "balance_decimals";

    private const string StepName = "balance_step";
    private const int HeadingRow = 3;

    public static SheetDraft Of(ResultsLesson lesson, LookTable looks)
    {
        WorkbookTexts texts = lesson.Texts;
        var sheet = new SheetDraft(texts.ConstantsTab, looks) { HeadingRow = HeadingRow };
        sheet.Wide(1, 46);
        sheet.Wide(2, 18);
        sheet.Wide(3, 30);
        sheet.Band(1, 3, texts.ConstantsTitle, CellLook.Title);
        sheet.Text(HeadingRow, 1, texts.ConstantColumn, CellLook.Heading);
        sheet.Text(HeadingRow, 2, texts.ConstantNumberColumn, CellLook.Heading);
        sheet.Text(HeadingRow, 3, texts.ConstantNameColumn, CellLook.Heading);
        int row = HeadingRow + 1;
        foreach ((string formula, double mass) in lesson.MolarMasses)
        {
            string written = Formula.Parse(formula).Value!.ToUnicode();
            string text = written == formula ? formula : texts.FormulaTwice(written, formula);
            sheet.Text(row, 1, Sentences.Heading(texts.MolarMass(text), "(g/mol)"), CellLook.RowHeading);
            sheet.Number(row, 2, mass, CellLook.WorkedOut("0.000##"));
            sheet.Text(row, 3, lesson.Constants.Of(formula), CellLook.RowHeading);
            row++;
        }

        sheet.Text(row, 1, Sentences.Heading(texts.BalanceStep, "g"), CellLook.RowHeading);
        sheet.Number(row, 2, lesson.Balance.ResolutionInGrams, CellLook.Reading("0.######"));
        sheet.Text(row, 3, StepName, CellLook.RowHeading);
        sheet.Text(row + 1, 1, texts.BalanceDecimals, CellLook.RowHeading);
        // 0.05 g has two decimals as 0.01 g has; the small number keeps a logarithm just below a whole number on its side.
        sheet.Formula(row + 1, 2, $"MAX(0,-INT(LOG10({StepName})+0.000000001))", CellLook.WorkedOut("0"), lesson.Balance.Decimals);
        sheet.Text(row + 1, 3, DecimalsName, CellLook.RowHeading);
        sheet.Band(row + 3, 3, texts.AtomicWeights(AtomicWeights.Iupac2024.Description), CellLook.Sentence);
        sheet.Band(row + 4, 3, texts.AnotherBalance, CellLook.Sentence);
        return sheet;
    }

    /// <summary>The names and the cells that they stand for.</summary>
    public static IEnumerable<(string Name, string Cell)> Names(ResultsLesson lesson)
    {
        int row = HeadingRow + 1;
        foreach (string formula in lesson.MolarMasses.Keys)
        {
            yield return (lesson.Constants.Of(formula), Cell(lesson, row++));
        }

        yield return (StepName, Cell(lesson, row));
        yield return (DecimalsName, Cell(lesson, row + 1));
    }

    private static string Cell(ResultsLesson lesson, int row) => FormattableString.Invariant($"{lesson.Texts.ConstantsTab}!$B${row}");
}
