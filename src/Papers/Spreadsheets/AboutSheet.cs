using Calx.Practicals.Definition;

namespace Calx.Papers.Spreadsheets;

/// <summary>What the workbook is of, what is locked in it, and what it cannot do.</summary>
internal static class AboutSheet
{
    /// <summary>What its tab is called.</summary>
    public const string Name = "About";

    public static SheetDraft Of(ResultsLesson lesson, LookTable looks)
    {
        Practical practical = lesson.Setting.Practical;
        var sheet = new SheetDraft(Name, looks);
        sheet.Wide(1, 26);
        sheet.Wide(2, 84);
        sheet.Band(1, 2, "About this workbook", CellLook.Title);
        (string What, string Text)[] lines =
        [
            ("Practical", practical.Title),
            ("Id and version", FormattableString.Invariant($"{practical.Id}, version {practical.Version}")),
            ("Class and date", string.Join(", ", new[] { lesson.Setting.Occasion.ClassName, lesson.Setting.Occasion.Date }.OfType<string>().DefaultIfEmpty("not said"))),
            ("Printed", lesson.Setting.Occasion.Printed ?? "the date of printing was not said"),
            ("Sheets", $"{ClassResultsSheet.Name}: a row a group. {OneGroupSheet.Name}: one group’s table with its workings. {ConstantsSheet.Name}: molar masses and the balance’s step."),
            ("What is locked", "Headings, formulas and constants. Yellow cells can be written in: names, readings, observations, the balance’s step."),
            ("How to lift it", "Excel: Review, Unprotect Sheet. LibreOffice: Tools, Protect Sheet. There is no password."),
            ("What is warned of", "A reading with more decimals than the balance shows, one that is not above 0, and one that is no number. A warning can be passed over: what was read is what is written. Pasted readings are not asked about, but turn orange."),
            ("Repeated weighings", "Formulas take the last weighing of a row that is there."),
            ("Empty and –", $"A grey cell is empty while a reading that it needs is missing. {AnswerFormula.NoValue} stands where there is no value, as for a division by 0."),
            ("No uncertainty here", $"The numbers of this workbook have no uncertainty and say nothing of what went wrong. They do not replace an analysis: calx analyse FILE.xlsx --practical {practical.Id} reads the sheet {ClassResultsSheet.Name} as it is."),
        ];
        for (int i = 0; i < lines.Length; i++)
        {
            sheet.Text(i + 3, 1, lines[i].What, CellLook.Heading);
            sheet.Text(i + 3, 2, lines[i].Text, CellLook.RowHeading);
            sheet.Fit(i + 3);
        }

        return sheet;
    }
}
