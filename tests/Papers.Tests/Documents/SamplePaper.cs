using Calx.Papers.Charts;
using Calx.Papers.Documents;

namespace Calx.Papers.Tests.Documents;

/// <summary>A paper with every part that a paper can have.</summary>
internal static class SamplePaper
{
    public static Paper Of(PaperLook? look = null) => new(
        "sample",
        "Burning magnesium",
        new RunningHeads("Student sheet: Burning magnesium in a crucible", "Class 9F · 26 November 2026", "magnesium-oxide, version 2 · printed 26 November 2026", "DRAFT: not yet checked"),
        [
            new PaperBlock.Paragraph("What happens to the mass?", ParagraphLook.Lead),
            new PaperBlock.Panel(PanelKind.Caution, "Take care", [new PaperBlock.Items(ListKind.Bullets, ["Eye protection on & kept on.", Phrase.Of("Tongs every time: ").Then("porcelain does not look hot", PhraseLook.Bold).Then(".")])]),
            new PaperBlock.Heading("What you do"),
            new PaperBlock.Items(ListKind.Numbers, ["Weigh the empty crucible.", "Add 0.24 g of magnesium ribbon.", "Heat strongly."]),
            new PaperBlock.Figure(Picture(), "The crucible on its triangle.", 90),
            new PaperBlock.Heading("Your readings"),
            new PaperBlock.Table(new PaperTable(
                [new PaperColumn("Reading", 3), new PaperColumn("Mass / g", 1, IsNumber: true)],
                [[new PaperCell("Mass of empty crucible and lid", 9, IsHeading: true), ""], [new PaperCell("Mass after heating", 9, IsHeading: true), "28.34"]],
                TableRuling.Framed)),
            new PaperBlock.Heading("What it means", 2),
            new PaperBlock.Equation(new MathPart.Row(
                new MathPart.Words("ratio = "),
                new MathPart.Fraction(
                    new MathPart.Fraction(new MathPart.Bracketed(new MathPart.Words("after − before")), new MathPart.Words("M(O)")),
                    new MathPart.Words("moles of magnesium")),
                new MathPart.Words(" = "),
                new MathPart.Blank())),
            new PaperBlock.Paragraph(Phrase.Of("Write with the unit, as in ").Then("mass / g", PhraseLook.Italic).Then(".")),
            new PaperBlock.WritingLines(3),
            new PaperBlock.Items(ListKind.Numbers, ["First again.", "Second again."]),
            new PaperBlock.WorkingSpace(30),
            new PaperBlock.Panel(PanelKind.Help, "Words to use", [new PaperBlock.Paragraph("mass, resolution, uncertainty, CO₂, x⁻¹")]),
            new PaperBlock.FoldOver([[new PaperBlock.Paragraph("First.")], [new PaperBlock.WritingLines(2)], [new PaperBlock.Items(ListKind.Ticks, ["stop"])]], "Fold here.", "Show the next"),
            new PaperBlock.CutApart([[new PaperBlock.Paragraph("For Ada.")], [new PaperBlock.Table(new PaperTable([new PaperColumn("", 1)], [["For Ben."]]))]]),
            new PaperBlock.PageBreak(),
            new PaperBlock.Items(ListKind.Ticks, ["gas off", "tongs back"]),
            new PaperBlock.Table(new PaperTable([new PaperColumn("Item", 2), new PaperColumn("Out", 1, true), new PaperColumn("Back", 1, true)], [["crucible", "13", ""], ["lid", "14", ""]])),
            new PaperBlock.Paragraph("Small print.", ParagraphLook.Small),
        ],
        look);

    private static SvgPicture Picture()
    {
        var picture = new SvgPicture("sample-picture", 300, 160, "A crucible", "A crucible with its lid on a triangle.");
        picture.Line(20, 140, 280, 140, "axis");
        picture.Polygon([(110, 60), (190, 60), (175, 120), (125, 120)], "band");
        picture.Text(200, 70, "crucible");
        return picture;
    }
}
