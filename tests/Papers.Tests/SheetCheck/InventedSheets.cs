namespace Calx.Papers.Tests.SheetCheck;

/// <summary>Parts of worksheets as teachers write them, all invented.</summary>
internal static class InventedSheets
{
    public const string Magnesium = "magnesium-oxide";
    public const string Copper = "copper-sulfate-hydrate";
    public const string Soda = "sodium-hydrogencarbonate";

    public const string MagnesiumSafety = """
        # Safety
        Wear eye protection all the time.
        Do not look directly at the burning magnesium; keep the lid on.
        The crucible stays hot for a long time: use tongs.
        Do not add water to what is left in the crucible.
        """;

    public const string MagnesiumMethod = """
        # Burning magnesium
        Larkmoor School, class 9F
        # Method
        1. Weigh the empty crucible with its lid.
        2. Coil 0.24 g of magnesium ribbon, put it in and weigh again.
        3. Heat strongly; lift the lid now and then for a moment.
        4. Let it cool and weigh it. Heat again until two readings agree.
        """;

    public const string MagnesiumTable = """
        # Results
        | Reading | Mass / g |
        | Empty crucible and lid | |
        | Crucible, lid and magnesium | |
        | After heating | |
        | After reheating | |
        """;

    public const string MagnesiumTask = """
        # Working out
        2Mg + O2 → 2MgO
        Ar: Mg = 24.3; O = 16.0
        Calculate the mass of magnesium and the mass of oxygen.
        Work out the ratio Mg : O and the formula of the oxide.
        """;

    public const string CopperSafety = """
        # Take care
        Eye protection throughout. Wash your hands afterwards.
        Copper sulfate is harmful if swallowed and harms water life: collect all of it, nothing goes down the sink.
        Heat gently and stop at once if the powder turns grey or brown: a choking gas is made.
        Steam scalds. Keep your face and hands away from above the crucible.
        Move hot things with tongs only.
        """;

    public const string CopperMethod = """
        # Water in blue crystals
        Weigh the empty crucible. Put 2.50 g of blue crystals into it and weigh again.
        Heat gently until no blue is left. Let it cool, then weigh it.
        """;

    public const string CopperTable = """
        # Results
        | Mass of empty crucible (g) | Mass of crucible and blue crystals (g) | Mass after heating (g) |
        | | | |
        """;

    public const string CopperTask = """
        # Questions
        CuSO4·5H2O(s) -> CuSO4(s) + 5H2O(g)
        Mr(H2O) = 18.0, Mr(CuSO4) = 159.6
        Find the mass of water driven off.
        Work out the value of x.
        """;

    public const string SodaSafety = """
        # Safety
        Goggles on. The residue irritates eyes: rinse eyes at once and wash hands.
        Steam scalds, so keep face and hands from above the crucible.
        Everything stays hot: tongs every time.
        """;

    public const string SodaMethod = """
        # Heating sodium hydrogencarbonate
        Weigh a crucible with lid, then again with 2.50 g of sodium hydrogencarbonate.
        Heat for ten minutes, let it cool and weigh again.
        """;

    public const string SodaTable = """
        # Table
        | Mass of empty crucible and lid in g | Mass of crucible, lid and sodium hydrogencarbonate in g | Mass after heating in g |
        | | | |
        """;

    public const string SodaTask = """
        # What it shows
        2NaHCO3 = Na2CO3 + CO2 + H2O
        Relative formula masses: NaHCO3 84, Na2CO3 106
        Calculate the mass of residue.
        Which product do your results fit?
        """;

    /// <summary>A whole sheet, with texts put in the place of others.</summary>
    public static string Sheet(string practical, params (string From, string To)[] changes)
    {
        string sheet = practical switch
        {
            Magnesium => string.Join('\n', MagnesiumMethod, MagnesiumSafety, MagnesiumTable, MagnesiumTask),
            Copper => string.Join('\n', CopperSafety, CopperMethod, CopperTable, CopperTask),
            _ => string.Join('\n', SodaMethod, SodaSafety, SodaTable, SodaTask),
        };
        foreach ((string from, string to) in changes)
        {
            Assert.Contains(from, sheet, StringComparison.Ordinal);
            sheet = sheet.Replace(from, to, StringComparison.Ordinal);
        }

        return sheet;
    }
}
