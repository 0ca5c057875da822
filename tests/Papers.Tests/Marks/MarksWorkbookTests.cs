using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Marks;
using Calx.Papers.Tests.Spreadsheets;
using Calx.Practicals.Marking;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Sheets = Calx.Papers.Tests.Spreadsheets.Sheets;

namespace Calx.Papers.Tests.Marks;

/// <summary>The marks as a workbook, read back. The validator is that of the Open XML SDK, after ECMA-376.</summary>
public sealed class MarksWorkbookTests
{
    private const int HeadingRow = 4;

    [Fact]
    public void Every_part_is_valid()
    {
        Overruling own = new(MarkedClasses.NameOf(1), "ratio", 0, "=worked aloud");
        foreach (byte[] book in (byte[][])
        [
            Book(MarkedClasses.Of(36, isWhole: true, ids: true, own)), Book(MarkedClasses.Of(30)), Book(MarkedClasses.Nobody()),
            MarksWorkbook.Of(MarkedClasses.Of(6), MarkedClasses.Setting(new PaperLook(SheetSize.Letter, true, null))),
        ])
        {
            using SpreadsheetDocument file = Sheets.Open(book);
            Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
        }
    }

    [Fact]
    public void Each_student_has_a_row_with_the_marks_earned_and_their_sum_as_a_formula()
    {
        using SpreadsheetDocument file = Sheets.Open(Book(MarkedClasses.Of(36)));
        Worksheet marks = Sheets.Named(file, "Marks");
        Assert.Equal(
            ["Student", "Group", "Mass of magnesium (of 1)", "Mass of oxygen (of 1)", "Moles of magnesium (of 1)", "Moles of oxygen atoms (of 1)", "Ratio Mg : O (of 1)", "Total", "Of", "%"],
            Row(file, marks, HeadingRow));
        for (int i = 0; i < 36; i++)
        {
            string[] row = Row(file, marks, HeadingRow + 1 + i);
            int expected = MarkedClasses.Ways[i % MarkedClasses.Ways.Count].Marks;
            Assert.Equal((MarkedClasses.NameOf(i), Text($"{(i / 3) + 1}")), (row[0], row[1]));
            Assert.Equal((expected, expected, 5), (row[2..7].Sum(Number), Number(row[7]), Number(row[8])));
            Assert.Equal(Text($"SUM(C{i + 5}:G{i + 5})"), Sheets.Cell(marks, "H", i + 5).CellFormula!.Text);
        }

        Assert.Equal("Mean", Row(file, marks, HeadingRow + 37)[0]);
        Assert.Equal(17 / 6.0, double.Parse(Row(file, marks, HeadingRow + 37)[7], CultureInfo.InvariantCulture), 1e-12);
    }

    /// <summary>A second program works the formulas out, before and after a mark is changed.</summary>
    [Fact]
    public async Task Another_program_adds_up_to_the_same_totals_and_follows_a_change()
    {
        MarkedClass marked = MarkedClasses.Of(36, isWhole: true, ids: false, new Overruling(MarkedClasses.NameOf(0), "conserved", 1, "yes"), new Overruling(MarkedClasses.NameOf(1), "ratio", 0, ""));
        byte[] book = Changed(Book(marked), _ => { });
        int columns = marked.Questions.Count + marked.Works[0].Prose.Count;
        string total = Letter(3 + columns);
        byte[] changed = Changed(book, file => Sheets.Cell(Sheets.Named(file, "Marks"), "C", 5).CellValue = new CellValue("0"));
        using SpreadsheetDocument before = Sheets.Open(await Office.Recalculated(book, TestContext.Current.CancellationToken));
        using SpreadsheetDocument after = Sheets.Open(await Office.Recalculated(changed, TestContext.Current.CancellationToken));
        int[] Totals(SpreadsheetDocument file) => [.. marked.Works.Select((_, i) => Number(Sheets.Cell(Sheets.Named(file, "Marks"), total, i + 5).CellValue!.Text))];
        Assert.Equal(marked.Works.Select(w => w.Total), Totals(before));
        Assert.Equal(marked.Works.Select((w, i) => w.Total - (i == 0 ? 1 : 0)), Totals(after));
        double mean = double.Parse(Sheets.Cell(Sheets.Named(before, "Marks"), total, 41).CellValue!.Text, CultureInfo.InvariantCulture);
        Assert.Equal(marked.Works.Average(w => w.Total), mean, 1e-9);
    }

    [Fact]
    public void Texts_that_begin_like_a_formula_stay_texts()
    {
        using SpreadsheetDocument file = Sheets.Open(Book(MarkedClasses.Of(8, isWhole: true)));
        Stylesheet styles = file.WorkbookPart!.WorkbookStylesPart!.Stylesheet!;
        string[] formulas = [.. file.WorkbookPart.WorksheetParts.SelectMany(p => p.Worksheet!.Descendants<CellFormula>()).Select(f => f.Text)];
        Assert.All(formulas, f => Assert.Matches(@"^(SUM\(|IF\()", f));
        Cell[] odd = [.. file.WorkbookPart.WorksheetParts.SelectMany(p => p.Worksheet!.Descendants<Cell>()).Where(c => c.InnerText.Length > 0 && "=+-@".Contains(c.InnerText[0], StringComparison.Ordinal) && c.CellFormula is null && c.DataType?.Value == CellValues.InlineString)];
        Assert.NotEmpty(odd);
        Assert.All(odd, c => Assert.True(((CellFormat)styles.CellFormats!.ElementAt((int)c.StyleIndex!.Value)).QuotePrefix!.Value));
    }

    [Fact]
    public void What_is_said_of_a_mark_stands_beside_it_as_a_sign()
    {
        MarkedClass marked = MarkedClasses.Of(6, isWhole: true, ids: false, new Overruling(MarkedClasses.NameOf(1), "massOxygen", 0, "copied"));
        using SpreadsheetDocument file = Sheets.Open(Book(marked));
        Worksheet marks = Sheets.Named(file, "Marks");
        Assert.EndsWith("\" ×\"", Format(file, Sheets.Cell(marks, "F", 6)), StringComparison.Ordinal);
        Assert.EndsWith("\" →\"", Format(file, Sheets.Cell(marks, "G", 6)), StringComparison.Ordinal);
        Assert.EndsWith("\" *\"", Format(file, Sheets.Cell(marks, "D", 6)), StringComparison.Ordinal);
        Assert.EndsWith("\" ?\"", Format(file, Sheets.Cell(marks, "D", 9)), StringComparison.Ordinal);
        Assert.EndsWith("\" –\"", Format(file, Sheets.Cell(marks, "E", 10)), StringComparison.Ordinal);
        string[] legend = Row(file, marks, 3);
        Assert.All("×→~–?*…", sign => Assert.Contains(sign, legend[0]));
        // Answers in words wait in their own columns, and count for nothing yet.
        int first = marked.Questions.Count + 2;
        string[] row = Row(file, marks, 5), headings = Row(file, marks, HeadingRow);
        Assert.Equal(["Question 1 (of 2)", "Question 2 (of 1)", "Question 3 (of 1)", "Question 4 (of 2)", "Question 5 (of 2)"], headings[first..(first + 5)]);
        Assert.Equal(["…", "…", "0", "…", "…"], row[first..(first + 5)]);
    }

    [Fact]
    public void Every_answer_is_there_as_given_with_what_was_expected_and_what_may_lie_behind_it()
    {
        MarkedClass marked = MarkedClasses.Of(6, isWhole: true, ids: false, new Overruling(MarkedClasses.NameOf(1), "ratio", 0, "copied from Zoë"), new Overruling(MarkedClasses.NameOf(0), "what-happened", 2, "Well put."));
        using SpreadsheetDocument file = Sheets.Open(Book(marked));
        Worksheet answers = Sheets.Named(file, "Answers");
        Assert.Equal(6 * (marked.Questions.Count + 5), Rows(answers).Count(r => r.RowIndex! > 3));
        string[] wrong = Find(file, answers, MarkedClasses.NameOf(1), "Moles of oxygen atoms / mol");
        Assert.Equal(("0.00438", "0.00875", "wrong", "0", "1"), (wrong[3], wrong[4], wrong[6], wrong[7], wrong[8]));
        Assert.Matches(@"^the molar mass of the molecule was used where atoms are counted \(([5-9]\d|100).%\)", wrong[9]);
        string[] overruled = Find(file, answers, MarkedClasses.NameOf(1), "Ratio Mg : O");
        Assert.Equal(("earlier mistake rightly used; by you: 0 in place of 1", "copied from Zoë", "2.256"), (overruled[6], overruled[11], overruled[5]));
        string[] words = Find(file, answers, MarkedClasses.NameOf(0), "Question 1: What happened to the mass when the magnesium burnt, and by how much? Say why.");
        Assert.Equal(("The mass rose by 0.14 g, for oxygen joined.", "marked by you", "2", "Well put."), (words[3], words[6], words[7], words[11]));
        Assert.Contains("magnesium joined with oxygen of the air", words[4], StringComparison.Ordinal);
        string[] misused = Find(file, answers, MarkedClasses.NameOf(0), "Question 5: Name one change that would make the ratio less uncertain, and say why.");
        Assert.StartsWith("‘weight’: ", misused[9], StringComparison.Ordinal);
        Assert.Equal("waits for you", misused[6]);
        Assert.Equal($"A3:L{3 + (6 * (marked.Questions.Count + 5))}", answers.Elements<AutoFilter>().Single().Reference!.Value);
    }

    [Fact]
    public void The_class_has_its_answers_ideas_and_groups_and_nothing_that_is_for_the_teachers_eyes_only()
    {
        MarkedClass marked = MarkedClasses.Of(30, isWhole: true);
        byte[] book = Book(marked);
        using SpreadsheetDocument file = Sheets.Open(book);
        Worksheet sheet = Sheets.Named(file, "Class");
        string[][] rows = [.. Rows(sheet).Select(r => r.Elements<Cell>().Select(c => Sheets.Plain(Sheets.TextOf(file, c))).ToArray())];
        // Five of the six ways give a mass of magnesium that can be read, and all of them are right.
        Assert.Contains(rows, r => r is ["Mass of magnesium", "25", "25", "0", ..]);
        Assert.All(marked.Groupings, g => Assert.Contains(rows, r => r.Length == 6 && r[4] == g.Question && r[5] == string.Join(", ", g.Students)));
        Assert.NotEmpty(marked.ToAskAbout);
        string everything = string.Concat(file.WorkbookPart!.WorksheetParts.Select(p => p.Worksheet!.InnerText));
        Assert.All(marked.ToAskAbout, look => Assert.DoesNotContain(look.Sentence, everything, StringComparison.Ordinal));
    }

    [Fact]
    public void A_class_of_nobody_and_one_that_handed_in_nothing_are_tables_too()
    {
        using SpreadsheetDocument nobody = Sheets.Open(Book(MarkedClasses.Nobody()));
        Assert.Equal(["Student", "Group"], Row(nobody, Sheets.Named(nobody, "Marks"), HeadingRow)[..2]);
        MarkedClass empty = MarkedClasses.Mark([["student", "empty", "before", "after", "ratio"], ["Ada", "30.00", "30.24", "30.38", ""], ["Ben", "", "", "", ""]]);
        using SpreadsheetDocument file = Sheets.Open(Book(empty));
        Assert.Equal(["0", "0"], ((int[])[5, 6]).Select(r => Sheets.Cell(Sheets.Named(file, "Marks"), "H", r).CellValue!.Text));
        Assert.Contains(Rows(Sheets.Named(file, "Class")), r => r.InnerText.Contains("nobody has handed anything in", StringComparison.Ordinal));
    }

    [Fact]
    public void Headings_stay_in_sight_and_nothing_is_locked()
    {
        using SpreadsheetDocument file = Sheets.Open(Book(MarkedClasses.Of(30)));
        Pane pane = Sheets.Named(file, "Marks").Descendants<Pane>().Single();
        Assert.Equal((4.0, 1.0, PaneStateValues.Frozen), (pane.VerticalSplit!.Value, pane.HorizontalSplit!.Value, pane.State!.Value));
        Assert.All(file.WorkbookPart!.WorksheetParts, p => Assert.Empty(p.Worksheet!.Elements<SheetProtection>()));
        Assert.Equal(Book(MarkedClasses.Of(30)), Book(MarkedClasses.Of(30)));
    }

    private static byte[] Book(MarkedClass marked) => MarksWorkbook.Of(marked, MarkedClasses.Setting());

    /// <summary>A workbook in which something was changed, without the values of its formulas.</summary>
    private static byte[] Changed(byte[] book, Action<SpreadsheetDocument> change)
    {
        using var stream = new MemoryStream();
        stream.Write(book);
        using (var file = SpreadsheetDocument.Open(stream, isEditable: true))
        {
            change(file);
            // What no program has worked out before, the program has to.
            foreach (Cell cell in file.WorkbookPart!.WorksheetParts.SelectMany(p => p.Worksheet!.Descendants<Cell>()).Where(c => c.CellFormula is not null))
            {
                cell.CellValue = null;
            }
        }

        return stream.ToArray();
    }

    private static IEnumerable<Row> Rows(Worksheet sheet) => sheet.Descendants<Row>();

    private static string[] Row(SpreadsheetDocument file, Worksheet sheet, int row) =>
        [.. Rows(sheet).Single(r => r.RowIndex! == row).Elements<Cell>().Select(c => Sheets.TextOf(file, c))];

    private static string[] Find(SpreadsheetDocument file, Worksheet sheet, string student, string asked) =>
        Rows(sheet).Select(r => r.Elements<Cell>().Select(c => Sheets.Plain(Sheets.TextOf(file, c))).ToArray()).Single(r => r.Length > 2 && r[0] == student && r[2] == asked);

    private static string Format(SpreadsheetDocument file, Cell cell)
    {
        Stylesheet styles = file.WorkbookPart!.WorkbookStylesPart!.Stylesheet!;
        uint id = ((CellFormat)styles.CellFormats!.ElementAt((int)cell.StyleIndex!.Value)).NumberFormatId!.Value;
        return styles.NumberingFormats!.Elements<NumberingFormat>().Single(f => f.NumberFormatId! == id).FormatCode!.Value!;
    }

    private static string Letter(int column) => Calx.Practicals.Readings.CellPosition.LetterOf(column);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
