using Calx.Papers.SheetCheck;
using Calx.Practicals.Definition;

namespace Calx.Papers.Tests.SheetCheck;

/// <summary>Thirty invented sheets with one to three faults each: all are found, and nothing else is said of them.</summary>
public sealed class PlantedFaultTests
{
    private sealed record Planted(string Practical, bool IsWord, (string From, string To)[] Changes, params string[] Rules);

    private static readonly Planted[] Sheets =
    [
        // 'Weight' for mass.
        new(InventedSheets.Magnesium, true, [("| Reading | Mass / g |", "| Reading | Weight / g |")], "weight"),
        new(InventedSheets.Copper, false, [("Find the mass of water", "Find the weight of water driven off, that is the mass of water")], "weight"),
        new(InventedSheets.Soda, true, [("Heat for ten minutes, let it cool and weigh again.", "Heat for ten minutes. Write down the new weight. Are both weights the same?")], "weight", "weight"),
        // Units.
        new(InventedSheets.Magnesium, true, [("| Reading | Mass / g |", "| Reading | Mass |")], "unit"),
        new(InventedSheets.Copper, true, [("| Mass of empty crucible (g) |", "| Mass of empty crucible |")], "unit"),
        new(InventedSheets.Soda, false, [("| Mass after heating in g |", "| Mass after heating |")], "unit"),
        new(InventedSheets.Magnesium, true, [("| Reading | Mass / g |\n", "| Reading | Mass |\n"), ("| Empty crucible and lid | |", "| Empty crucible and lid | ........ g |")], "unit-in-cell", "unit"),
        new(InventedSheets.Copper, false, [("| | | |", "| 21.34 g | 23.84 | 22.94 |")], "unit-in-cell"),
        // Decimals.
        new(InventedSheets.Magnesium, true, [("| After heating | |", "| After heating | 28.9 |"), ("| After reheating | |", "| After reheating | 28.92 |")], "decimals"),
        new(InventedSheets.Copper, true, [("| | | |", "| 21.342 | 23.84 | 22.94 |")], "decimals"),
        new(InventedSheets.Soda, false, [("Goggles on.", "Goggles on. Write all masses to one decimal place.")], "decimals"),
        new(InventedSheets.Magnesium, false, [("Calculate the mass of magnesium", "Example: mass of empty crucible and lid = 28.3 g\nCalculate the mass of magnesium")], "decimals"),
        // A row or column that a question needs.
        new(InventedSheets.Magnesium, true, [("| Empty crucible and lid | |\n", "")], "missing-reading"),
        new(InventedSheets.Copper, true, [("| Mass of empty crucible (g) | ", "| "), ("| | | |", "| | |")], "missing-reading"),
        new(InventedSheets.Soda, false, [("| Mass of empty crucible and lid in g |", "|"), ("| | | |", "| | |")], "missing-reading"),
        // Loose words.
        new(InventedSheets.Magnesium, true, [("the formula of the oxide.", "the formula of the oxide.\nAre your results reliable?")], "loose-word"),
        new(InventedSheets.Copper, false, [("Work out the value of x.", "Work out the value of x. Say whether your value is very accurate and name one human error.")], "loose-word", "loose-word"),
        new(InventedSheets.Soda, true, [("Weigh a crucible", "The balance has an accuracy of 0.01 g. Weigh a crucible")], "loose-word"),
        // Cautions.
        new(InventedSheets.Magnesium, true, [("Wear eye protection all the time.\n", "")], "caution"),
        new(InventedSheets.Magnesium, false, [("The crucible stays hot for a long time: use tongs.\n", "")], "caution"),
        new(InventedSheets.Magnesium, true, [("Do not look directly at the burning magnesium; keep the lid on.\n", "")], "caution"),
        new(InventedSheets.Copper, true, [("Heat gently and stop at once if the powder turns grey or brown: a choking gas is made.\n", "")], "caution"),
        new(InventedSheets.Soda, false, [("Steam scalds, so keep face and hands from above the crucible.\n", "")], "caution"),
        // Equations.
        new(InventedSheets.Magnesium, true, [("2Mg + O2 → 2MgO", "Mg + O2 → MgO")], "equation"),
        new(InventedSheets.Copper, false, [("CuSO4(s) + 5H2O(g)", "CuSO4(s) + H2O(g)")], "equation"),
        new(InventedSheets.Soda, true, [("2NaHCO3 = Na2CO3 + CO2 + H2O", "NaHCO3 = Na2CO3 + CO2 + H2O")], "equation"),
        // Ar and Mr. IUPAC, abridged: Mg 24.305, O 15.999; CuSO4 159.60, Na2CO3 105.99.
        new(InventedSheets.Magnesium, true, [("Mg = 24.3; O = 16.0", "Mg = 23.4; O = 16.0")], "atomic-mass"),
        new(InventedSheets.Copper, true, [("Mr(CuSO4) = 159.6", "Mr(CuSO4) = 156.9")], "atomic-mass"),
        // Several at once.
        new(InventedSheets.Soda, true, [("Na2CO3 106", "Na2CO3 83"), ("Calculate the mass of residue.", "Calculate the weight, that is the mass of residue."), ("CO2 + H2O", "CO2 + 2H2O")], "weight", "equation", "atomic-mass"),
        new(InventedSheets.Magnesium, true, [("| Reading | Mass / g |", "| Reading | Mass |"), ("2Mg + O2 → 2MgO", "2Mg + O2 → MgO"), ("Wear eye protection all the time.\n", "")], "unit", "caution", "equation"),
    ];

    [Fact]
    public void There_are_thirty_and_most_are_of_a_word_processor()
    {
        Assert.Equal(30, Sheets.Length);
        Assert.True(Sheets.Count(s => s.IsWord) >= 15);
        Assert.All(Sheets, s => Assert.InRange(s.Rules.Length, 1, 3));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_planted_fault_is_found_and_nothing_else(int number)
    {
        Planted planted = Sheets[number];
        string lines = InventedSheets.Sheet(planted.Practical, planted.Changes);
        IReadOnlyList<SheetFinding> found = CheckedSheet.Findings(
            MadeSheet.Opened(planted.IsWord ? MadeSheet.Word(lines) : MadeSheet.Text(lines)), BuiltInPracticals.Find(planted.Practical)!);
        Assert.True(
            planted.Rules.Order(StringComparer.Ordinal).SequenceEqual(found.Select(f => f.Rule).Order(StringComparer.Ordinal)),
            $"{string.Join(", ", planted.Rules)} expected, found:\n{string.Join('\n', found)}");
    }

    /// <summary>A whole sheet with a dozen faults, in other words than the thirty.</summary>
    [Fact]
    public void Every_fault_of_a_bad_sheet_is_found()
    {
        Sheet sheet = Assert.IsType<SheetFile.Opened>(SheetFile.Read(Path.Combine(AppContext.BaseDirectory, "Files", "worksheet-faulty.txt"))).Sheet;
        string[] expected =
        [
            "weight line 6, column 38", "weight line 7, column 39", "loose-word line 21, column 11", "loose-word line 21, column 80", "unit-in-cell line 13, column 33",
            "decimals line 13, column 33", "missing-reading line 20, column 1", "caution the whole sheet", "caution the whole sheet", "caution the whole sheet",
            "equation line 16, column 11", "atomic-mass line 18, column 27",
        ];
        Assert.Equal(expected, CheckedSheet.Findings(sheet, BuiltInPracticals.Find(InventedSheets.Magnesium)!).Select(f => $"{f.Rule} {f.Place}"));
    }

    /// <summary>IUPAC, abridged: Mg 24.305, O 15.999, S 32.06.</summary>
    [Theory]
    [InlineData("| Element | Ar |\n| Mg | 24.3 |\n| S | 23.1 |", "table 1, row 3, column 2")]
    [InlineData("| Element | Mg | O |\n| Ar | 24.3 | 61 |", "table 1, row 2, column 3")]
    public void Atomic_masses_in_tables_are_checked(string table, string place) => Assert.Equal(
        place,
        CheckedSheet.Findings(MadeSheet.Opened(MadeSheet.Word(table)), BuiltInPracticals.Find(InventedSheets.Magnesium)!).Single(f => f.Rule == "atomic-mass").Place);

    /// <summary>Mass of oxygen is mass of oxide less mass of magnesium: no weighing of the crucible is needed.</summary>
    [Fact]
    public void Ready_made_masses_do_for_the_readings_that_they_stand_for()
    {
        const string sheet = "| Mass of magnesium / g | Mass of magnesium oxide / g |\n| | |\nCalculate the mass of oxygen and the ratio Mg : O.";
        Assert.DoesNotContain(CheckedSheet.Findings(MadeSheet.Opened(MadeSheet.Word(sheet)), BuiltInPracticals.Find(InventedSheets.Magnesium)!), f => f.Rule == "missing-reading");
    }

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Sheets.Length)];
}
