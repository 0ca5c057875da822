using Calx.Chemistry.Elements;
using Calx.Practicals.Checking;
using Calx.Practicals.Definition;
using Calx.Practicals.Drafting;

namespace Calx.Engine.Tests.Practicals.Drafting;

/// <summary>Files drafted from answers fit together; what the answers do not tell is asked for, and never made up.</summary>
public sealed class DraftTests
{
    [Theory]
    [InlineData("heated")]
    [InlineData("gas")]
    [InlineData("closed")]
    [InlineData("product")]
    public void The_example_of_each_family_lacks_hazards_and_nothing_else(string family)
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["happens"] = family });

        Assert.Empty(draft.Faults);
        CheckedPractical found = PracticalCheck.Of(draft.Text!, "f.yaml", AtomicWeights.Iupac2024);
        Assert.Equal(draft.Id, found.Practical?.Id);
        Assert.NotEmpty(found.Findings);
        Assert.All(found.Findings, f => Assert.Equal(CheckKind.LookUp, f.Kind));
        Assert.True(found.IsWhole);
    }

    // Theory values from atomic weights of IUPAC 2021, abridged: ZnO / ZnCO3 = 81.379 / 125.39, CO2 / NaHCO3 = 44.009 / 84.006,
    // CaCO3 / CaCl2 = 100.09 / 110.98, MgO / Mg = 40.304 / 24.305, 3 Fe to Fe3O4 = 231.53 / 167.54.
    [Theory]
    [InlineData("heated", "", "residueFraction", 0.64901)]
    [InlineData("heated", "Mg + O2 -> MgO", "residueFraction", 1.65826)]
    [InlineData("heated", "Fe + O2 -> Fe3O4", "residueFraction", 1.38194)]
    [InlineData("gas", "", "lossFraction", 0.52388)]
    [InlineData("product", "", "productFraction", 0.90187)]
    [InlineData("closed", "", "massChange", 0)]
    public void Theory_values_follow_from_the_equation_balanced_or_not(string family, string equation, string quantity, double value)
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["happens"] = family, ["equation"] = equation, ["title"] = "Mine" });

        CheckedPractical found = PracticalCheck.Of(draft.Text!, "f.yaml", AtomicWeights.Iupac2024);
        Assert.Equal(value, Assert.Single(found.Ideals, i => i.Quantity.Id == quantity).Value!.Value, 0.0001);
    }

    // 2 g of NaHCO3 takes 0.868 g of HCl (84.006 and 36.458 g/mol, same weights): a strength that is rounded down would leave some over.
    [Fact]
    public void Just_enough_is_enough()
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["happens"] = "gas", ["equation"] = "NaHCO3 + HCl -> NaCl + H2O + CO2", ["usual"] = "2", ["largest"] = "2", ["excess"] = "1", ["title"] = "Mine" });

        CheckedPractical found = PracticalCheck.Of(draft.Text!, "f.yaml", AtomicWeights.Iupac2024);
        Assert.Equal(0.52388, Assert.Single(found.Ideals, i => i.Quantity.Id == "lossFraction").Value!.Value, 0.00005);
    }

    // Moles of water are those of the formulas; three of the four molecules of a partly dried salt leave.
    [Theory]
    [InlineData("CuSO4.5H2O -> CuSO4 + H2O", 5)]
    [InlineData("BaCl2·2H2O -> BaCl2 + H2O", 2)]
    [InlineData("MgSO4.7H2O -> MgSO4.H2O + H2O", 6)]
    [InlineData("Na2CO3.10H2O -> Na2CO3 + H2O", 10)]
    public void A_hydrate_asks_for_its_moles_of_water(string equation, double moles)
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["equation"] = equation, ["title"] = "Mine" });

        CheckedPractical found = PracticalCheck.Of(draft.Text!, "f.yaml", AtomicWeights.Iupac2024);
        Assert.All(found.Findings, f => Assert.Equal(CheckKind.LookUp, f.Kind));
        Assert.Equal("moleRatio", found.Practical!.Findings.Key);
        Assert.Equal(moles, Assert.Single(found.Ideals, i => i.Quantity.Id == "moleRatio").Value!.Value, 1e-9);
        Assert.Contains("How many moles of water", found.Practical.Question, StringComparison.Ordinal);
        Assert.Contains(found.Practical.Answers, a => a.Label.StartsWith("moles of water for 1 mole of", StringComparison.Ordinal));
        Assert.Contains(found.Practical.Sheet.Questions, q => q.Id == "how-many");
    }

    // A hydroxide loses water too, but has none of crystallisation: common knowledge, no source.
    [Theory]
    [InlineData("Ca(OH)2 -> CaO + H2O")]
    [InlineData("CuSO4.5H2O -> CuO + SO3 + H2O")]
    public void What_is_no_hydrate_or_loses_more_than_water_asks_for_no_moles_of_water(string equation)
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["equation"] = equation, ["title"] = "Mine" });

        Assert.Equal("residueFraction", PracticalReader.Read(draft.Text!, "f.yaml").Practical!.Findings.Key);
    }

    // One number is the likely one, three quarters of it the least and half as much again the most (judgement); two are least and most.
    [Theory]
    [InlineData("10", 7.5, 10, 15)]
    [InlineData("2", 1.5, 2, 3)]
    [InlineData("8 14", 8, 11, 14)]
    [InlineData("5, 8, 12", 5, 8, 12)]
    public void Minutes_may_be_said_in_one_number_or_two(string said, double least, double likely, double most)
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["act"] = said });

        StepMinutes minutes = PracticalReader.Read(draft.Text!, "f.yaml").Practical!.Steps.Single(s => s.Id == "act").Minutes;
        Assert.Equal((least, likely, most), (minutes.Least, minutes.Likely, minutes.Most));
    }

    // Names and formulas are those of the answers; the words round them are this program's own, no source.
    [Theory]
    [InlineData("heated", "MgCO3(s) -> MgO + CO2", "", "Heating MgCO3", "heating-mgco3")]
    [InlineData("heated", "CuSO4.5H2O -> CuSO4 + H2O", "blue copper sulfate", "Heating blue copper sulfate", "heating-blue-copper-sulfate")]
    [InlineData("gas", "CaCO3 + HCl -> CaCl2 + CO2 + H2O", "marble", "Gas from marble", "gas-from-marble")]
    [InlineData("closed", "BaCl2 + Na2SO4 -> BaSO4 + NaCl", "", "BaCl2 in a closed vessel", "bacl2-in-a-closed-vessel")]
    [InlineData("product", "BaCl2 + Na2SO4 -> BaSO4 + NaCl", "", "A solid made from BaCl2", "a-solid-made-from-bacl2")]
    public void With_the_equation_alone_a_practical_is_called_after_its_sample_and_never_after_the_example(
        string family, string equation, string name, string title, string id)
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["happens"] = family, ["equation"] = equation, ["sampleName"] = name });

        Practical practical = PracticalReader.Read(draft.Text!, "f.yaml").Practical!;
        Assert.Equal((title, id), (practical.Title, practical.Id));
        Assert.Contains(name.Length > 0 ? name : equation[..5], practical.Question, StringComparison.Ordinal);
        Assert.Equal(title, draft.Questions.Single(q => q.Key == "title").Default);

        var example = Draft.Of(new Dictionary<string, string> { ["happens"] = family });
        foreach (string key in (string[])["title", "question", "sampleName", "productName"])
        {
            string usual = example.Questions.Single(q => q.Key == key).Default;
            Assert.DoesNotContain(usual, draft.Text!, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Without_a_weighing_of_the_empty_vessel_the_check_says_which_is_missing()
    {
        var draft = Draft.Of(new Dictionary<string, string> { ["empty"] = "no" });

        CheckedPractical found = PracticalCheck.Of(draft.Text!, "f.yaml", AtomicWeights.Iupac2024);
        CheckFinding finding = found.Findings.First(f => f.Kind == CheckKind.DoesNotHold);
        Assert.Contains("the unknown mass of crucible stays in it", finding.Problem, StringComparison.Ordinal);
        Assert.Contains("weigh crucible before anything is put in", finding.Cure, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("equation", "Mg + O2 -> CaO", "cannot be balanced")]
    [InlineData("equation", "Mg + -> MgO", "formula")]
    [InlineData("equation", "Mg + S -> MgS", "S does not come from the air")]
    [InlineData("product", "CO2", "'CO2' leaves as a gas, so it cannot be what is left")]
    [InlineData("sample", "Cu", "is no reactant of the equation; expected ZnCO3")]
    [InlineData("usual", "2,5", "write a full stop, not a comma")]
    [InlineData("usual", "0", "a number from 0.01 to 500 is expected")]
    [InlineData("act", "5 3 8", "least, likely and most minutes are expected")]
    [InlineData("act", "0", "or one number, such as 5, for the likely ones")]
    [InlineData("act", "-5", "least, likely and most minutes are expected")]
    [InlineData("act", "9 4", "least, likely and most minutes are expected")]
    [InlineData("flame", "perhaps", "expected yes or no")]
    [InlineData("happens", "explodes", "expected heated, gas, closed, product")]
    [InlineData("id", "magnesium-oxide", "the program brings along a practical 'magnesium-oxide'")]
    [InlineData("id", "new", "cannot be a short name")]
    [InlineData("vessel", "dish {a}", "curly brackets")]
    [InlineData("colour", "red", "there is no question 'colour'")]
    public void A_wrong_answer_is_told_by_its_question_and_no_file_is_made(string key, string answer, string reason)
    {
        var draft = Draft.Of(new Dictionary<string, string> { [key] = answer });

        Assert.Null(draft.Text);
        Assert.Contains(reason, draft.Faults[key], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("It's \"hot\": {a, b} # [c]")]
    [InlineData("- x")]
    [InlineData("*star &anchor !tag")]
    public void No_sign_in_an_answer_means_anything_to_the_file(string words)
    {
        var draft = Draft.Of(new Dictionary<string, string>
        {
            ["title"] = words, ["question"] = words, ["vessel"] = Plain(words), ["sampleName"] = Plain(words), ["productName"] = Plain(words), ["id"] = "mine",
        });

        Practical? practical = PracticalReader.Read(draft.Text!, "f.yaml").Practical;
        Assert.Equal((words, words), (practical?.Title, practical?.Question));
    }

    /// <summary>Names stand in sentences of the sheet, where curly brackets mean something.</summary>
    private static string Plain(string words) => words.Replace('{', '(').Replace('}', ')');
}
