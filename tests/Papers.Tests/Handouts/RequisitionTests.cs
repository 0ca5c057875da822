using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Planning;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Paper = Calx.Papers.Documents.Paper;

namespace Calx.Papers.Tests.Handouts;

/// <summary>What the technician puts out and takes back.</summary>
public sealed class RequisitionTests
{
    /// <summary>Twelve groups: of 12 crucibles of which 4 % break, and 12 lids of which 8 % do, 2 and 3 spares are enough 95 times in 100
    /// (binomial tables: P(X ≤ 2 | 12, 0.04) = 0.989, P(X ≤ 1) = 0.919; P(X ≤ 2 | 12, 0.08) = 0.935, P(X ≤ 3) = 0.988).</summary>
    [Fact]
    public void Pieces_are_counted_with_their_spares_and_can_be_counted_back()
    {
        PaperTable kit = Table("Item", RequisitionSheet.Of(StudentSheetTests.Setting(Planned.Magnesium(12))));
        Assert.Equal(["Item", "Needed", "Spare", "Out", "Back", "Broken"], kit.Columns.Select(c => c.Heading.Text));
        Assert.Equal(["crucible, 15 cm³, porcelain", "12", "2", "14", "", ""], Row(kit, "crucible"));
        Assert.Equal(["lid of the crucible", "12", "3", "15", "", ""], Row(kit, "lid"));
        Assert.Equal(["eye protection", "24", "1", "25", "", ""], Row(kit, "eye"));
        // 12 × 0.24 g = 2.88 g, and a fifth of it for spare.
        Assert.Equal(["magnesium ribbon", "2.88\u00a0g", "0.576\u00a0g", "3.46\u00a0g", "", ""], Row(kit, "magnesium"));
    }

    [Fact]
    public void A_weighed_metre_gives_the_length_to_cut()
    {
        PaperTable kit = Table("Item", RequisitionSheet.Of(StudentSheetTests.Setting(Planned.Magnesium(12)), new PlanStock(1.0, new Dictionary<string, double>())));
        Assert.Equal("magnesium ribbon: 24 cm each, 3.46 m in all", Row(kit, "magnesium")[0]);
    }

    [Fact]
    public void Only_what_the_plan_has_prepared_is_to_be_prepared_and_its_minutes_add_up()
    {
        PaperTable left = Table("What", RequisitionSheet.Of(StudentSheetTests.Setting(Planned.Magnesium(12))));
        Assert.DoesNotContain(left.Rows, r => r[0].Text.Text.StartsWith("Fire", StringComparison.Ordinal));
        PaperTable prepared = Table("What", RequisitionSheet.Of(StudentSheetTests.Setting(Planned.Easy)));
        Assert.Contains(prepared.Rows, r => r[0].Text.Text.StartsWith("Fire", StringComparison.Ordinal));
        // Six groups: 5 + 6 × 0.5, 20 + 6, 5 + 6, 10.
        Assert.Equal(["8", "26", "11", "10", "55"], prepared.Rows.Select(r => r[1].Text.Text));
    }

    [Fact]
    public void Every_paper_of_every_practical_is_valid_for_a_word_processor()
    {
        foreach (Plan plan in StudentSheetTests.Plans.Values)
        {
            PaperSetting setting = StudentSheetTests.Setting(plan);
            foreach (Paper paper in PaperSet.Of(setting, Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>()).Documents)
            {
                using var file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(paper)), isEditable: false);
                Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019)
                    .Validate(file, TestContext.Current.CancellationToken).Select(e => $"{paper.Id}: {e.Path?.XPath}: {e.Description}"));
            }
        }
    }

    private static PaperTable Table(string first, Paper paper) =>
        Written.Blocks(paper.Content).OfType<PaperBlock.Table>().Select(t => t.Content).Single(t => t.Columns[0].Heading.Text == first);

    private static string[] Row(PaperTable table, string begins) =>
        [.. table.Rows.Single(r => r[0].Text.Text.StartsWith(begins, StringComparison.Ordinal)).Select(c => c.Text.Text)];
}
