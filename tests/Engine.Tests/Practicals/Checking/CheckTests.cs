using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Definition;
using Calx.Practicals.Checking;
using Calx.Practicals.Definition;
using Calx.Practicals.Definition.Source;

namespace Calx.Engine.Tests.Practicals.Checking;

/// <summary>A check names what is wrong, where it stands and what to do, all of it at once.</summary>
public sealed class CheckTests
{
    private const string Pen = "    pen: { swapped: 0.35, wrongDigit: 0.25, wholeGram: 0.25, droppedZero: 0.15 }\n    standing: judgement\n";

    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public void The_files_that_come_along_have_nothing_to_look_at(string id)
    {
        CheckedPractical found = Of(Files.Text(id));

        Assert.Empty(found.Findings);
        Assert.True(found.IsWhole);
    }

    [Theory]
    [InlineData("magnesium-oxide", "massRatio", 1.6583)]            // 40.304 / 24.305, IUPAC 2021 abridged atomic weights
    [InlineData("copper-sulfate-hydrate", "moleRatio", 5)]          // the formula CuSO4.5H2O
    [InlineData("sodium-hydrogencarbonate", "residueFraction", 0.63083)] // 105.988 / (2 x 84.006), same weights
    public void Theory_values_are_those_of_a_book(string id, string quantity, double value)
    {
        IdealValue ideal = Assert.Single(Of(Files.Text(id)).Ideals, i => i.Quantity.Id == quantity);

        Assert.Equal(value, ideal.Value!.Value, 0.00005 * value);
    }

    [Fact]
    public void Many_faults_are_told_at_once_and_one_hides_no_other()
    {
        string text = Files.Changed(Files.Magnesium, "equation: 2Mg + O2 -> 2MgO", "equation: Mg + O2 -> MgO");
        text = Replaced(text, "minutes: [0.42, 0.75, 2], kit: { balance: 1 }, reading: after", "kit: { balance: 1 }, reading: after");
        text = Replaced(text, "hazard: nuisance dust, control: do not blow on the powder,", "hazard: nuisance dust,");
        text = Replaced(text, Pen, Pen.Replace("    standing: judgement\n", "", StringComparison.Ordinal));
        text = Replaced(text, "{ id: massOxygen, label: mass of oxygen, unit: g, formula: after - before, marks: 1 }", "{ id: massOxygen, label: mass of oxygen, unit: g, marks: 1 }");
        text = Replaced(text, "    pan: { parts: [crucible, lid], places: [inside] }", "    pan: { parts: [lid], places: [inside] }");

        CheckedPractical found = Of(text);

        Assert.Null(found.Practical);
        Holds(found, CheckKind.Fault, "is not balanced", "did you mean 2Mg + O2 -> 2MgO?");
        Holds(found, CheckKind.Fault, "a step lacks the key 'minutes'", "");
        Holds(found, CheckKind.Fault, "lacks the key 'control'", "");
        Holds(found, CheckKind.Fault, "a fault lacks the key 'standing'", "");
        Holds(found, CheckKind.Fault, "an answer lacks the key 'formula'", "");
        Holds(found, CheckKind.DoesNotHold, "no reading determines 'sampleMass'", "a weighing is missing: weigh crucible");
    }

    [Theory]
    [InlineData("pan: { parts: [crucible, lid], places: [inside] }", "pan: { parts: [lid], places: [inside] }", "formula: before - empty }", "no reading determines 'sampleMass': the unknown mass of crucible stays in it", "weigh crucible")]
    [InlineData("aliases: [empty,", "aliases: [before heating, empty,", "before heating, mass before", "means the reading 'empty' already", "take it out")]
    [InlineData("law: { beta: [1.2, 100, 0, 1] }", "law: { normal: [0.9, 0.3] }", "{ normal: [0.9, 0.3] }", "of the draws of 'smoke' are impossible", "{ beta: [alpha, beta, 0, 1] }")]
    [InlineData("expect: rises", "expect: falls", "expect: falls", "the mass is expected to fall, but on perfect readings 'massChange' is 0.158 g", "look at the equation")]
    [InlineData("test: { rises: massChange }", "test: { falls: massChange }", "{ falls: massChange }", "this can never hold: on perfect readings 'massChange' is 0.158, which does not fall", "")]
    [InlineData("among: [0.5, 1, 2]", "among: [0.5, 2, 3]", "{ chooses: {", "is 1, which is none of 0.5, 2, 3", "")]
    [InlineData("reading: after, round: each", "round: each", "id: after\n", "no step of the lesson takes the reading 'after'", "'reading: after'")]
    [InlineData("usual: 0.24,", "usual: 0.29,", "{ normal: [0.24, 0.048] }", "the middle of 'sample' makes a sample of 0.24 g, but the usual sample on line 272 is 0.29 g", "'usual' there")]
    [InlineData("perGroup: 0.24,", "perGroup: 0.27,", "{ id: ribbon,", "the kit puts out 0.27 g of 'ribbon' for a group, but the usual sample on line 272 is 0.24 g", "'perGroup' here")]
    [InlineData("label: Mass of empty crucible and lid\n    unit: g", "label: Mass of empty crucible and lid\n    unit: kg", "kg\n", "'empty' is read from the balance in 'kg'", "write 'unit: g'")]
    [InlineData("formula: (after - empty) / (before - empty) }", "formula: ln((before - after) / (before - empty)) }", "ln((before - after) / (before - empty))", "on perfect readings 'massRatio' has no value", "a difference that is 0")]
    [InlineData("label: gain in mass, unit: g,", "label: gain in mass, unit: mg,", "{ id: massChange,", "'massChange' is said to be in 'mg', but 'after - before' adds or subtracts weighings alone", "1000 * (after - before)")]
    [InlineData("{ id: massOxygen, label: mass of oxygen, unit: g,", "{ id: massOxygen, label: mass of oxygen, unit: mol,", "{ id: massOxygen,", "'massOxygen' is said to be in 'mol'", "write 'unit: g'")]
    [InlineData("practical: magnesium-oxide", "practical: Magnesium-Oxide", "Magnesium-Oxide", "the id 'Magnesium-Oxide' has capitals", "'practical: magnesium-oxide'")]
    [InlineData("label: moles of magnesium, unit: mol,", "label: moles of magnesium, unit: mool,", "mool,", "'mool' is no unit that is known here", "did you mean mol?")]
    [InlineData("unit: '1', formula: molesMagnesium / molesOxygen", "unit: heaps/kg, formula: molesMagnesium / molesOxygen", "heaps/kg", "'heaps' is no unit that is known here", "write one such as g, mol")]
    [InlineData("formula: before - empty }", "formula: empty - empty }", "empty - empty }", "on perfect readings the sample, 'sampleMass', is 0 g", "one of them is taken too early or too late")]
    public void What_the_model_says_against_a_file_is_told_at_its_place(string from, string to, string marker, string problem, string cure)
    {
        string text = Files.Changed(Files.Magnesium, from, to);
        (int line, int column) = Files.PlaceOf(text, marker);

        CheckedPractical found = Of(text);

        Assert.NotNull(found.Practical);
        CheckFinding finding = Assert.Single(found.Findings, f => f.Problem.Contains(problem, StringComparison.Ordinal));
        Assert.Equal(CheckKind.DoesNotHold, finding.Kind);
        Assert.Contains(cure, finding.Cure, StringComparison.Ordinal);
        Assert.Equal(line, finding.Line);
        Assert.True(Math.Abs(column - finding.Column) <= "formula: ".Length, finding.In("f.yaml"));
    }

    // What a formula is sought from is the mass of one substance; a reading by itself has the crucible in it.
    [Fact]
    public void A_formula_cannot_be_sought_from_the_mass_of_vessel_and_all()
    {
        CheckedPractical found = Of(Files.Changed(
            "magnesium-sulfate-hydrate", "{ id: saltMass, label: mass of anhydrous magnesium sulfate, unit: g, formula: after - empty }", "{ id: saltMass, label: mass of anhydrous magnesium sulfate, unit: g, formula: after }"));

        Holds(found, CheckKind.DoesNotHold, "no reading determines 'saltMass': the unknown mass of crucible stays in it", "weigh crucible");
    }

    [Fact]
    public void A_law_that_draws_more_than_a_class_may_use_is_told_where_no_usual_sample_is_given()
    {
        string text = Files.Changed(Files.Magnesium, "law: { normal: [0.24, 0.048] }", "law: { normal: [2.4, 0.048] }");
        int amounts = text.IndexOf("\namounts:", StringComparison.Ordinal);
        text = text.Remove(amounts, text.IndexOf('\n', amounts + 1) - amounts);

        Holds(Of(text), CheckKind.DoesNotHold, "the middle of 'sample' makes a sample of 2.4 g, but a class may use 0.3 g at most", "draw less");
    }

    [Theory]
    [InlineData("usual: 0.24,", "usual: 25,", "the usual sample, 25 g (line 272), is more than a class may use, 0.3 g")]
    [InlineData("largestSample: 0.30,", "largestSample: 0.2,", "the usual sample, 0.24 g (line 272), is more than a class may use, 0.2 g")]
    [InlineData("largestSample: 0.30, unit: g", "largestSample: 300, unit: mg", "the largest sample is in mg")]
    public void A_usual_sample_that_no_class_may_use_is_a_fault_of_the_limits(string from, string to, string problem)
    {
        string text = Files.Changed(Files.Magnesium, from, to);

        CheckedPractical found = Of(text);

        Assert.Null(found.Practical);
        CheckFinding finding = Assert.Single(found.Findings);
        Assert.Equal((CheckKind.Fault, Files.PlaceOf(text, "limits: {").Line), (finding.Kind, finding.Line));
        Assert.StartsWith(problem, finding.Problem, StringComparison.Ordinal);
        Assert.NotNull(finding.Cure);
    }

    [Fact]
    public void The_sample_of_every_file_is_the_same_in_law_plan_and_kit()
    {
        var places = new FilePlaces(new MapNode([], default));

        Assert.All(BuiltInPracticals.All, p => Assert.Empty(SampleCheck.Of(p, AtomicWeights.Iupac2024, places)));
    }

    [Fact]
    public void What_is_weighed_in_every_file_is_in_grams()
    {
        var places = new FilePlaces(new MapNode([], default));

        Assert.All(BuiltInPracticals.All.Select(p => new UnitCheck(p, places)), check => Assert.Empty(check.OfReadings().Concat(check.OfFormulas())));
    }

    [Fact]
    public void A_reading_that_is_never_taken_is_told_with_what_hangs_on_it()
    {
        CheckedPractical found = Of(Files.Changed(Files.Magnesium, "  - read: empty\n", ""));

        Holds(found, CheckKind.Fault, "the procedure never takes the reading 'empty'", "");
        Holds(found, CheckKind.DoesNotHold, "no reading that is taken determines 'sampleMass'", "put 'read: empty' into the procedure");
    }

    [Fact]
    public void A_gas_in_a_sealed_rigid_vessel_is_a_fault_though_the_file_keeps_it_in()
    {
        string text = Files.Changed("sodium-hydrogencarbonate", "- { id: inside,", "- { id: inside, sealedAndRigid: true,").Replace(", air: true", "", StringComparison.Ordinal);

        Holds(Of(text), CheckKind.Fault, "makes a gas", "bag");
    }

    [Fact]
    public void A_flammable_liquid_with_a_flame_is_a_fault()
    {
        string text = Files.Changed(Files.Magnesium, "form: ribbon cut from a coil }", "form: ribbon cut from a coil, flammableLiquid: true }");

        Holds(Of(text), CheckKind.Fault, "naked flame", "heat without a flame");
    }

    [Fact]
    public void A_hazard_that_is_not_known_is_to_be_looked_up_and_nothing_else_is_wrong()
    {
        string text = Files.Text(Files.Magnesium);
        string line = text.Split('\n').First(l => l.Contains("{ of: oxide,", StringComparison.Ordinal));

        CheckedPractical found = Of(text.Replace(line + "\n", "", StringComparison.Ordinal));

        CheckFinding finding = Assert.Single(found.Findings.DistinctBy(f => f.Kind));
        Assert.Equal(CheckKind.LookUp, finding.Kind);
        Assert.Contains("not known", finding.Problem, StringComparison.Ordinal);
        Assert.Contains("look it up", finding.Cure, StringComparison.Ordinal);
    }

    // 1.5 g of CaCO3 (100.09 g/mol, IUPAC 2021 abridged) takes 1.093 g of HCl (36.46 g/mol), the largest sample of 2.0 g 1.457 g; there are
    // 50.8 g of acid.
    [Theory]
    [InlineData("0.0200", "usual sample, 1.5 g")]
    [InlineData("0.0250", "largest sample, 2 g")]
    [InlineData("0.0295", null)]
    public void What_the_sample_reacts_with_is_enough_for_it(string strength, string? told)
    {
        CheckedPractical found = Of(Replaced(Files.Text("carbonate-purity"), "ideal: 0.0359,", $"ideal: {strength},"));

        CheckFinding[] lacking = [.. found.Findings.Where(f => f.Problem.Contains("runs out", StringComparison.Ordinal))];
        Assert.Equal(told is null ? 0 : 1, lacking.Length);
        Assert.All(lacking, f => Assert.Contains(told!, f.Problem, StringComparison.Ordinal));
    }

    private static void Holds(CheckedPractical found, CheckKind kind, string problem, string cure) => Assert.Contains(
        found.Findings, f => f.Kind == kind && f.Problem.Contains(problem, StringComparison.Ordinal) && (f.Cure ?? "").Contains(cure, StringComparison.Ordinal));

    private static string Replaced(string text, string from, string to)
    {
        int at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{from}' is not in the file.");
        return text[..at] + to + text[(at + from.Length)..];
    }

    private static CheckedPractical Of(string text) => PracticalCheck.Of(text, "f.yaml", AtomicWeights.Iupac2024);
}
