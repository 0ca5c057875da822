using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.SheetCheck;
using Calx.Papers.Tests.Handouts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Tests.SheetCheck;

/// <summary>Sheets with nothing wrong: nothing is said of them.</summary>
public sealed class CleanSheetTests
{
    private sealed record Clean(string Practical, bool IsWord, params (string From, string To)[] Changes);

    private static readonly Clean[] Sheets =
    [
        new(InventedSheets.Magnesium, true),
        new(InventedSheets.Copper, true),
        new(InventedSheets.Soda, true),
        new(InventedSheets.Magnesium, false),
        new(InventedSheets.Copper, false),
        new(InventedSheets.Soda, false),
        // Words that look like faults and are none.
        new(InventedSheets.Magnesium, true,
            ("1. Weigh", "You need: crucible, lid, tongs, burner, balance that weighs to 0.01 g.\n1. Weigh"),
            ("# Working out", "Say mass, not weight, of what a balance shows. Do not write 'human error'.\n# Working out"),
            ("2Mg + O2 → 2MgO", "magnesium + oxygen → magnesium oxide\nBalance the equation:\nMg + O2 → MgO")),
        // A list of apparatus with amounts is no table of readings; numbers filled in; other school values of Ar.
        new(InventedSheets.Copper, true,
            ("# Results", "| Apparatus | How many |\n| Crucible | 1 |\n| Blue crystals | 2.50 g |\n# Results"),
            ("| | | |", "| 21.30 | 23.80 | 22.90 |"),
            ("Mr(H2O) = 18.0, Mr(CuSO4) = 159.6", "Ar: Cu 64, S 32, O 16, H 1. Mr of H2O = 2 × 1 + 16 = 18")),
        // Trials as columns, a unit in the heading above them, blanks and fractions in the equation.
        new(InventedSheets.Soda, false,
            ("2NaHCO3 = Na2CO3 + CO2 + H2O", "__NaHCO3 → __Na2CO3 + CO2 + H2O\nNaHCO3 → ½Na2CO3 + ½CO2 + ½H2O"),
            ("Relative formula masses: NaHCO3 84, Na2CO3 106", "Molar masses: NaHCO3 84.0 g/mol; Na2CO3 106.0 g/mol. n = m/M, so moles of NaHCO3 = 2.50/84.0 = 0.0298")),
        // Headings merged over two columns, and one down the side.
        new(InventedSheets.Magnesium, true,
            ("| Reading | Mass / g |", "| vReading | Mass / g | << |\n| ^^ | Trial 1 | Trial 2 |"),
            ("| Empty crucible and lid | |", "| Empty crucible and lid | 28.30 | 28.31 |"),
            ("| Crucible, lid and magnesium | |", "| Crucible, lid and magnesium | 28.54 | 28.55 |"),
            ("| After heating | |", "| After heating | 28.69 | 28.70 |"),
            ("| After reheating | |", "| After reheating | 28.70 | 28.70 |")),
    ];

    [Fact]
    public void There_are_ten() => Assert.Equal(10, Sheets.Length);

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Nothing_is_found_on_a_clean_sheet(int number)
    {
        Clean clean = Sheets[number];
        string lines = InventedSheets.Sheet(clean.Practical, clean.Changes);
        Assert.Empty(CheckedSheet.Findings(MadeSheet.Opened(clean.IsWord ? MadeSheet.Word(lines) : MadeSheet.Text(lines)), BuiltInPracticals.Find(clean.Practical)!));
    }

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Sheets.Length)];

    /// <summary>Sheets written from end to end in other words: a dish for the crucible, lines to fill in for a table.</summary>
    [Theory]
    [InlineData("magnesium", InventedSheets.Magnesium)]
    [InlineData("copper-sulfate", InventedSheets.Copper)]
    [InlineData("hydrogencarbonate", InventedSheets.Soda)]
    public void Nothing_is_found_on_whole_sheets_in_other_words(string file, string practical) =>
        Assert.Empty(CheckedSheet.Findings(
            Assert.IsType<SheetFile.Opened>(SheetFile.Read(Path.Combine(AppContext.BaseDirectory, "Files", $"worksheet-{file}.txt"))).Sheet, BuiltInPracticals.Find(practical)!));

    /// <summary>The program's own sheets keep the rules that it holds others to.</summary>
    [Theory]
    [MemberData(nameof(StudentSheetTests.Everything), MemberType = typeof(StudentSheetTests))]
    public void Nothing_is_found_on_the_programs_own_sheets(string id, SupportLevel level) =>
        Assert.Empty(CheckedSheet.Findings(MadeSheet.Opened(PaperWord.Of(StudentSheet.Of(StudentSheetTests.Setting(StudentSheetTests.Plans[id]), level))), BuiltInPracticals.Find(id)!));
}
