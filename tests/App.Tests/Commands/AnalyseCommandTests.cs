using System.Text.Json;

namespace Calx.App.Tests.Commands;

public sealed class AnalyseCommandTests
{
    private const string Magnesium = "magnesium-oxide";

    private const string Class = """
        Group,Mass of empty crucible / g,Mass of crucible + magnesium / g,Mass after heating / g,Mass after reheating / g,after 3
        A,30.00,30.24,30.37,30.38,30.38
        B,29.10,29.35,29.50,29.51,29.51
        C,31.40,31.63,31.77,31.78,31.78
        """;

    // By hand with Ar 24.3 and 16.0: A has 0.24 g Mg and 0.14 g O, (0.14/16.0)/(0.24/24.3) = 0.886; the weights of
    // IUPAC move this by less than 0.001.
    [Fact]
    public void A_magnesium_class_gives_the_values_worked_by_hand()
    {
        JsonElement answer = ClassInput.Json(Magnesium, Class);

        JsonElement a = answer.Group("A");
        Assert.Equal(0.24, a.Value("sampleMass"), 9);
        Assert.Equal(0.14, a.Value("massChange"), 9);
        Assert.Equal(0.38 / 0.24, a.Value("massRatio"), 9);
        Assert.Equal(0.886, a.Value("moleRatio"), 0.001);
        Assert.Equal(36.84, a.Value("percentOxygen"), 0.01);
        Assert.Equal(Magnesium, answer.GetProperty("practical").GetString());
        Assert.Equal(3, answer.GetProperty("class").GetProperty("quantities").GetProperty("moleRatio").GetProperty("n").GetInt32());
        Assert.InRange(answer.GetProperty("class").GetProperty("conclusion").GetArrayLength(), 3, 6);
    }

    [Fact]
    public void Readings_are_kept_as_written_and_headings_are_said_to_be_what()
    {
        JsonElement answer = ClassInput.Json(Magnesium, Class);

        JsonElement readings = answer.Group("A").GetProperty("readings");
        Assert.Equal(
            ["empty", "before", "after", "after2", "after3"], readings.EnumerateObject().Select(reading => reading.Name));
        Assert.Equal("30.00", readings.GetProperty("empty").GetString());
        Assert.Equal(
            ["group", "empty", "before", "after", "after2", "after3"],
            answer.GetProperty("columns").EnumerateArray().Select(column => column.GetProperty("reading").GetString()));
        Assert.Equal("after 3", answer.GetProperty("columns")[5].GetProperty("heading").GetString());
    }

    // 0.01 g steps with the usual 0.7 step of scatter: u² = 0.01²/12 + 0.007² for each reading (JCGM 101, 6.4.2 for the
    // rounding), twice for a difference: 0.0107 g.
    [Fact]
    public void Uncertainty_of_a_change_comes_from_two_readings()
    {
        JsonElement change = ClassInput.Json(Magnesium, Class).Group("A").GetProperty("quantities").GetProperty("massChange");

        Assert.Equal(0.0107, change.GetProperty("standardUncertainty").GetDouble(), 4);
        Assert.Equal(2, change.GetProperty("budget").GetArrayLength());
        Assert.All(change.GetProperty("budget").EnumerateArray(), line => Assert.Equal(0.5, line.GetProperty("share").GetDouble(), 6));
        Assert.Equal("g", change.GetProperty("unit").GetString());
    }

    [Fact]
    public void Two_equal_weighings_after_heating_show_what_they_can()
    {
        JsonElement mass = ClassInput.Json(Magnesium, Class).Group("A").GetProperty("constantMass");

        Assert.Contains(mass.GetProperty("verdict").GetString(), new[] { "same", "cannot-tell" });
        Assert.Equal(0, mass.GetProperty("lastChange").GetDouble(), 9);
        Assert.InRange(mass.GetProperty("unreactedAtMost").GetDouble(), 0.001, 1);
    }

    [Theory]
    [InlineData("30.38", "30.48", "rising")]
    [InlineData("30.48", "30.38", "falling")]
    public void A_last_change_of_ten_divisions_is_seen(string after, string again, string verdict)
    {
        JsonElement mass = ClassInput.Json(Magnesium, $"Group,empty,before,after,after2\nA,30.00,30.24,{after},{again}\n")
            .Group("A").GetProperty("constantMass");

        Assert.Equal(verdict, mass.GetProperty("verdict").GetString());
        Assert.Equal(0.10, Math.Abs(mass.GetProperty("lastChange").GetDouble()), 9);
    }

    [Fact]
    public void Without_the_empty_vessel_the_gain_is_found_and_the_formula_is_not()
    {
        JsonElement answer = ClassInput.Json(
            Magnesium, "Group,Crucible + magnesium / g,After heating / g\nA,30.24,30.38\nB,30.22,30.35\n");

        Assert.Equal(["massChange"], answer.Texts("identifiable"));
        JsonElement ratio = Assert.Single(
            answer.GetProperty("notIdentifiable").EnumerateArray(), q => q.GetProperty("quantity").GetString() == "moleRatio");
        Assert.Equal("empty", ratio.GetProperty("missing").GetString());
        Assert.Contains(
            answer.GetProperty("class").Texts("conclusion"),
            sentence => sentence.Contains("cannot be found", StringComparison.Ordinal) && sentence.Contains("empty crucible", StringComparison.Ordinal));
        Assert.Equal(JsonValueKind.Null, answer.Group("A").GetProperty("quantities").GetProperty("moleRatio").GetProperty("value").ValueKind);
        Assert.Equal(0.14, answer.Group("A").Value("massChange"), 9);
    }

    [Fact]
    public void Where_nothing_can_be_found_the_answer_is_no()
    {
        Terminal run = ClassInput.Run(Magnesium, "Group,after heating\nA,30.38\nB,30.35\n", "--json");

        JsonElement answer = Schemas.Check("analysis", run.Output);
        Assert.Equal((1, ""), (run.ExitCode, run.Error));
        Assert.Empty(answer.Texts("identifiable"));
        Assert.NotEmpty(answer.GetProperty("notIdentifiable").EnumerateArray());
    }

    // By hand with Mr 18.0 and 159.6: 0.88 g of water, 1.62 g of salt: x = (0.88/18.0)/(1.62/159.6) = 4.817. The weights
    // of IUPAC (18.015, 159.60) lower it by one part in a thousand.
    [Fact]
    public void A_hydrate_class_with_semicolons_and_decimal_commas_gives_x()
    {
        JsonElement answer = ClassInput.Json(
            "copper-sulfate-hydrate",
            "Group;Mass of empty crucible / g;Mass of crucible and blue crystals / g;Mass after heating / g\n"
            + "A;25,00;27,50;26,62\nB;24,10;26,65;25,73\nC;25,31;27,77;26,89\n");

        Assert.Equal(4.817, answer.Group("A").Value("moleRatio"), 0.006);
        Assert.Equal(-0.88, answer.Group("A").Value("massChange"), 9);
        Assert.Equal(35.2, answer.Group("A").Value("percentWater"), 0.001);
        Assert.Equal("25.00", answer.Group("A").GetProperty("readings").GetProperty("empty").GetString());
    }

    // By hand: 3.00 g leaves 1.89 g, 0.630 of it (2 NaHCO3 -> Na2CO3: 105.99 / 168.01 = 0.631).
    [Fact]
    public void A_hydrogencarbonate_class_gives_the_fraction_left()
    {
        JsonElement answer = ClassInput.Json(
            "sodium-hydrogencarbonate", "Group,empty,before,after,after 2\nA,25.00,28.00,26.90,26.89\nB,24.00,27.10,25.96,25.96\n");

        Assert.Equal(0.63, answer.Group("A").Value("residueFraction"), 9);
        Assert.Equal(-1.11, answer.Group("A").Value("massChange"), 9);
    }

    [Fact]
    public void Options_on_the_balance_are_echoed()
    {
        JsonElement balance = ClassInput.Json(Magnesium, Class, "--resolution", "0.02", "--repeatability", "0.015").GetProperty("balance");

        Assert.Equal((0.02, "given"), (balance.GetProperty("resolution").GetDouble(), balance.GetProperty("resolutionFrom").GetString()));
        Assert.Equal((0.015, "given"), (balance.GetProperty("repeatability").GetDouble(), balance.GetProperty("repeatabilityFrom").GetString()));
    }

    [Fact]
    public void The_balance_is_otherwise_taken_from_the_decimals_and_judgement()
    {
        JsonElement balance = ClassInput.Json(Magnesium, Class).GetProperty("balance");

        Assert.Equal((0.01, "most decimals"), (balance.GetProperty("resolution").GetDouble(), balance.GetProperty("resolutionFrom").GetString()));
        Assert.Equal(0.7, balance.GetProperty("repeatabilityInDivisions").GetDouble());
        Assert.Equal("judgement", balance.GetProperty("repeatabilityFrom").GetString());
    }

    [Fact]
    public void The_page_for_a_person_ends_in_what_was_taken_for_what()
    {
        Terminal run = ClassInput.Run(Magnesium, Class);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("How the table was read", run.Output, StringComparison.Ordinal);
        Assert.Contains("Mass of empty crucible / g", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 110, line));
    }

    [Fact]
    public void A_group_without_a_weighing_after_heating_has_no_word_on_constant_mass()
    {
        Terminal run = ClassInput.Run(Magnesium, "Group,empty,before,after\nA,30.00,30.24,30.38\nRowan,29.10,29.35,spilt\n");

        string rowan = Assert.Single(run.Output.Split('\n'), line => line.StartsWith("  Rowan", StringComparison.Ordinal));
        Assert.DoesNotContain("weighing", rowan, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"verdict\": \"one-weighing\"", "\"verdict\": \"perhaps\"")]
    [InlineData("\"anomalous\": false", "\"anomalous\": null")]
    [InlineData("\"empty\": \"30.00\"", "\"empty\": 30.00")]
    [InlineData("\"n\": 1", "\"n\": 1.5")]
    [InlineData("\"conclusion\"", "\"conclusions\"")]
    [InlineData("\"unreactedAtMost\": null,", "")]
    public void The_shape_of_the_answer_lets_no_slip_through(string from, string to)
    {
        string right = ClassInput.Run(Magnesium, "Group,empty,before,after\nA,30.00,30.24,30.38\n", "--json").Output;
        string wrong = right.Replace(from, to, StringComparison.Ordinal);

        Schemas.Check("analysis", right);
        Assert.NotEqual(right, wrong);
        Assert.Throws<Xunit.Sdk.TrueException>(() => Schemas.Check("analysis", wrong));
    }
}
