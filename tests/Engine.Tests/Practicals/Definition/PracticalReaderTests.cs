using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>Each kind of fault: one change of a good file, where it must be found, and what must be said.</summary>
public sealed class PracticalReaderTests
{
    [Theory]
    // Keys: unknown, twice, missing, empty, none of a closed choice.
    [InlineData("form: ribbon", "from: ribbon", "from: ribbon", "'from' is no key of a material; expected id, label, formula, form")]
    [InlineData("form: ribbon", "from: ribbon", "from: ribbon", "did you mean form?")]
    [InlineData("question: What", "title: What", "title: What", "the key 'title' stands twice; it is already on line 6")]
    [InlineData("    unit: g\n    pan: { parts", "    pan: { parts", "id: empty", "a reading lacks the key 'unit'")]
    [InlineData("emptyAdvice: Weigh the empty crucible and lid before the magnesium goes in.", "expects: up", "expects: up", "did you mean expect?")]
    [InlineData("title: Burning magnesium in a crucible", "title:", "title:", "'title' has no value; expected a text")]
    [InlineData("- wet:", "- wett:", "wett:", "'wett' is no kind of event")]
    [InlineData("expect: rises", "expect: rise", "rise ", "'rise' is not understood; expected rises, falls, same; did you mean rises?")]
    // Wrong types.
    [InlineData("version: 2", "version: one", "one\n", "'one' is no number; expected a whole number from 1 to 1000")]
    [InlineData("version: 2", "version: 010", "010", "'010' starts with a zero; leave it off")]
    [InlineData("version: 2", "version: '1'", "'1'\n", "stands in quotes and so is a text")]
    [InlineData("version: 2", "version: 1.5", "1.5", "1.5 stands here; expected a whole number")]
    [InlineData("title: Burning magnesium in a crucible", "title: 1984", "1984", "1984 is not a text; put it in quotes")]
    [InlineData("rate: 0.28", "rate: 0,28", "0,28", "has a decimal comma; write a full stop")]
    [InlineData("rate: 0.28", "rate: 1.30", "1.30", "expected a number from 0 to 1")]
    [InlineData("rate: 0.28", "rate: .inf", ".inf", "'.inf' is no number")]
    [InlineData("rate: 0.28", "rate: 1e999", "1e999", "larger than any number that can be computed with")]
    [InlineData("rate: 0.28", "rate: [0.28]", "[0.28]", "a list stands here; expected a number from 0 to 1")]
    [InlineData("air: true", "air: yes", "yes", "'yes' stands here, where true or false was expected")]
    [InlineData("limits: { largestSample: 0.30", "limits: { largestSample: -0.30", "-0.30", "expected a number above 0")]
    [InlineData("limits: {", "limits: [] #{", "[] #{", "a list stands here, where the keys of the limits were expected")]
    [InlineData("aliases: [empty, crucible,", "aliases: [empty, 3,", "3, crucible and", "3 is not a text")]
    [InlineData("usual: 0.24,", "usual: 0,24,", "0,24, least", "'0,24' has a decimal comma; write a full stop: 0.24")]
    [InlineData("typical: 18, low: 11, high: 25", "typical: 18,5, low: 11,5, high: 25", "11,5", "'11,5' has a decimal comma; write a full stop: 11.5")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { normal: [0,24, 0,048] }", "[0,24, 0,048]", "expected [mean, standard deviation]. Where a comma is a decimal one, write a full stop: [0.24, 0.048]")]
    // Ids: unknown, twice, unfit.
    [InlineData("add: { material: magnesium,", "add: { material: magnesum,", "magnesum", "there is no material 'magnesum'; expected magnesium, film")]
    [InlineData("add: { material: magnesium,", "add: { material: magnesum,", "magnesum", "did you mean magnesium?")]
    [InlineData("pan: { parts: [crucible, lid], places: [inside] }", "pan: { parts: [crucible, lit], places: [inside] }", "lit]", "there is no part 'lit'")]
    [InlineData("wet: { water: damp, in: inside", "wet: { water: damp, in: outside", "outside", "there is no place 'outside'")]
    [InlineData("fraction: burnt * (1 - nitrided)", "fraction: burnt * (1 - nitride)", "nitride)", "there is no parameter 'nitride'")]
    [InlineData("formula: after - before }", "formula: after - befor }", "befor }", "there is no reading 'befor'; expected empty, before, after; did you mean before?")]
    [InlineData("key: moleRatio", "key: molRatio", "molRatio", "there is no quantity 'molRatio'")]
    [InlineData("react: { reaction: burning,", "react: { reaction: burnin,", "burnin,", "there is no reaction 'burnin'")]
    [InlineData("{ id: oxide,", "{ id: film,", "film, label: magnesium oxide", "the material 'film' is there already, on line 11")]
    [InlineData("- id: after\n", "- id: after2\n", "after2", "'after2' cannot be an id; expected a letter, then letters only")]
    [InlineData("{ id: massMagnesium,", "{ id: min,", "min,", "formulas use it for a function")]
    [InlineData("formula: massMagnesium / M(Mg)", "formula: molesOxygen / M(Mg)", "molesOxygen / M(Mg)", "the answer 'molesOxygen' is worked out only further down, on line 320; put that one above this")]
    [InlineData("off: { part: lid }", "off: { part: lead }", "lead", "there is no part 'lead'")]
    [InlineData("kit: { burner: 1 }, round: again", "kit: { bruner: 1 }, round: again", "bruner", "did you mean burner?")]
    // Formulas, equations and laws.
    [InlineData("formula: after - before }", "formula: after - * before }", "* before", "a number, name or bracket was expected")]
    [InlineData("formula: massMagnesium / M(Mg)", "formula: massMagnesium / M(Mq)", "Mq", "there is no element Mq")]
    [InlineData("formula: Mg3N2", "formula: Mg3Nn", "Nn }", "there is no element Nn")]
    [InlineData("formula: before - empty }", "formula: 2 * M(Mg) }", "2 * M(Mg)", "this formula rests on no reading")]
    [InlineData("equation: 2Mg + O2 -> 2MgO", "equation: Mg + O2 -> MgO", "Mg + O2 -> MgO", "the equation is not balanced, oxygen: 2 on the left, 1 on the right; did you mean 2Mg + O2 -> 2MgO?")]
    [InlineData("materials: { Mg: magnesium, O2: oxygen, MgO: oxide }", "materials: { Mg: magnesium, O2: oxygen }", "2Mg + O2", "MgO has no material")]
    [InlineData("MgO: oxide }", "MgO: oxide, CO2: oxide }", "CO2: oxide", "CO2 does not occur in the equation; expected Mg, O2, MgO")]
    [InlineData("MgO: oxide }", "MgO: nitride }", "nitride }\n  - id: nitriding", "the material 'nitride' is Mg3N2, not MgO")]
    [InlineData("limiting: magnesium", "limiting: oxide", "oxide\n    materials", "'oxide' is no reactant of this equation")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { normal: [0.24, 0] }", "[0.24, 0]", "these numbers make no law: the standard deviation is above 0")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { normal: [0.24] }", "[0.24]", "a list of 1 stands here; expected [mean, standard deviation]")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { norml: [0.24, 0.048] }", "norml", "did you mean normal?")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { mixture: [ { share: 0.5, law: { fixed: 1 } } ] }", "[ { share", "a mixture has at least two components")]
    [InlineData("law: { fixed: 0 }, standing", "law: { rectangular: [2, 1] }, standing", "[2, 1]", "the low end lies below the high end")]
    [InlineData("stands: before - empty", "stands: before * empty", "before * empty", "a ready-made mass stands for a sum or difference of readings")]
    [InlineData("minutes: [4, 8, 12]", "minutes: [4, 3, 12]", "[4, 3, 12]", "the times rise from the least over the likely to the most")]
    [InlineData("mass: { typical: 18,", "mass: { typical: 8,", "{ typical: 8", "the typical mass lies from low to high")]
    // Causes, standings and what a fault does.
    [InlineData("cause: misread", "cause: human-error", "human-error", "'human-error' is no cause; expected not-all-reacted")]
    [InlineData("cause: misread", "cause: missread", "missread", "did you mean misread?")]
    [InlineData("likelihood: { product-lost: 0.7,", "likelihood: { overheated: 0.7,", "overheated", "there is no fault of this practical with the cause 'overheated'")]
    [InlineData("wholeGram: 0.25", "wholeGram: 0.35", "{ swapped: 0.35", "the shares of the slips of the pen add up to 1")]
    [InlineData("    off: { part: lid }\n", "", "cause: part-left-off", "a fault has one of the keys set, warm, off, pen, gain")]
    [InlineData("largestSample: 0.30, unit: g, note: 'ribbon only, never powder', standing: judgement", "largestSample: 0.30, unit: g", "{ largestSample", "the limits lacks the key 'standing'")]
    [InlineData("standing: literature", "standing: guess", "guess", "'guess' is not understood; expected literature")]
    [InlineData("    source: E. Blade", "    # source: E. Blade", "literature\n    #", "'literature' needs its 'source'")]
    [InlineData("minutes: [4, 8, 12]", "minutes: 8", "8, kit", "8 stands here alone; write the least, the likely and the most minutes, such as [6, 8, 12]")]
    [InlineData("minutes: [4, 8, 12]", "minutes: [-4, 8, 12]", "[-4, 8, 12]", "minutes are never below 0, and -4 stands here")]
    [InlineData("minutes: [4, 8, 12]", "minutes: [4, 8, 5000]", "[4, 8, 5000]", "5000 min is longer than any step, which lasts 1000 at most")]
    [InlineData("minutes: [4, 8, 12]", "minutes: [12, 8, 4]", "[12, 8, 4]", "in order they are [4, 8, 12]")]
    [InlineData("formula: massMagnesium / M(Mg)", "formula: massMagnesium / ratio", "ratio, marks", "'molesMagnesium' and 'ratio' (line ")]
    [InlineData("formula: massMagnesium / M(Mg)", "formula: molesMagnesium / M(Mg)", "molesMagnesium / M(Mg)", "the answer 'molesMagnesium' cannot be worked out from itself")]
    [InlineData("control: do not blow on the powder", "control: ''", "''", "the text is blank")]
    // Procedure, readings and parameters that do not fit together.
    [InlineData("  - read: before\n", "", "id: before", "the procedure never takes the reading 'before'")]
    [InlineData("repeats: 3", "repeats: 4", "id: after", "has repeats: 4, but the procedure takes it up to 3 times")]
    [InlineData("  - wet: { water: damp, in: inside }            # the vessel's own water is on the pan from the start\n", "", "{ id: damp,", "the parameter 'damp' is used by no event and no pan")]
    [InlineData("  constantMass: {", "  #constantMass: {", "repeat:\n", "but 'findings' has no 'constantMass'")]
    [InlineData("{ reading: after, toleranceInDivisions", "{ reading: before, toleranceInDivisions", "{ reading: before", "'before' is taken once")]
    // Safety.
    [InlineData("form: ribbon cut from a coil", "flammableLiquid: true", "{ id: magnesium,", "magnesium is a flammable liquid, and the kit has a naked flame")]
    public void A_fault_is_named_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);

    [Fact]
    public void All_faults_are_told_in_the_order_of_the_file()
    {
        string text = Files.Changed(Files.Magnesium, "rate: 0.28", "rate: much")
            .Replace("version: 2\n", "version: first\n", StringComparison.Ordinal)
            .Replace("id: check-zero,", "id: check zero,", StringComparison.Ordinal);
        IReadOnlyList<DefinitionFault> faults = PracticalReader.Read(text, "f.yaml").Faults;
        Assert.Equal(
            [Files.PlaceOf(text, "first\n"), Files.PlaceOf(text, "much\n"), Files.PlaceOf(text, "check zero,")],
            faults.Select(f => (f.Line, f.Column)));
        Assert.StartsWith("f.yaml:5:10: 'first' is no number", faults[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_section_is_told_once_and_not_again_wherever_its_entries_are_used()
    {
        string text = Files.Changed(Files.Magnesium, "\nquantities:", "\nquantites:");

        Assert.Equal(
            ["a practical lacks the key 'quantities': a list, each entry a quantity", "'quantites' is no key of a practical"],
            PracticalReader.Read(text, "f.yaml").Faults.Select(f => f.Reason.Split(';')[0]));
    }

    [Fact]
    public void A_number_that_cannot_be_read_is_told_and_not_also_what_follows_from_it()
    {
        DefinitionFault fault = Assert.Single(PracticalReader.Read(Files.Changed(Files.Magnesium, "typical: 18,", "typical: 1e400,"), "f.yaml").Faults);
        Assert.StartsWith("1e400 is larger than any number", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gas_made_in_a_sealed_rigid_vessel_is_a_fault()
    {
        string text = Files.Changed("sodium-hydrogencarbonate", "label: in the crucible", "label: in the flask, sealedAndRigid: true");
        DefinitionFault fault = Assert.Single(PracticalReader.Read(text, "f.yaml").Faults);
        Assert.Equal(Files.PlaceOf(text, "react: { reaction: decomposition"), (fault.Line, fault.Column));
        Assert.Contains("makes a gas in a sealed, rigid vessel", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_substance_without_a_hazard_entry_is_to_be_looked_up_not_taken_for_harmless()
    {
        string text = Files.Changed(Files.Magnesium, "- { of: nitride,", "- { of: nitrides,");
        PracticalReading reading = PracticalReader.Read(text, "f.yaml");
        Assert.NotNull(reading.Practical);
        DefinitionFault warning = Assert.Single(reading.Warnings);
        Assert.Equal(Files.PlaceOf(text, "{ id: nitride,"), (warning.Line, warning.Column));
        Assert.StartsWith("hazard of magnesium nitride not known: look it up", warning.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comma_that_cuts_a_text_in_two_is_explained()
    {
        string text = Files.Changed(Files.Magnesium, "label: tongs whose jaws meet", "label: tongs, jaws that meet");
        DefinitionFault fault = Assert.Single(PracticalReader.Read(text, "f.yaml").Faults);
        Assert.Contains("a text with a comma needs quotes", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mixture_of_laws_is_read()
    {
        string text = Files.Changed(
            Files.Magnesium,
            "law: { beta: [60, 1.5, 0, 1] }",
            "law: { mixture: [ { share: 0.6, law: { triangular: [0, 0.9, 1] } }, { share: 0.4, law: { gamma: [2, 0.1] } } ] }");
        Parameter burnt = PracticalReader.Read(text, "f.yaml").Practical!.Parameters.Single(p => p.Id == "burnt");
        var mixture = Assert.IsType<ParameterLaw.Mixture>(burnt.Law);
        Assert.Equal(new ParameterLaw.Triangular(0, 0.9, 1), mixture.Components[0].Law);
        Assert.Equal(new ParameterLaw.Gamma(2, 0.1), mixture.Components[1].Law);
        Assert.Equal([0.6, 0.4], mixture.Components.Select(c => c.Share));
    }

    [Fact]
    public void Arms_gauges_moves_and_other_instruments_are_read()
    {
        string text = Files.Text(Files.Magnesium)
            .Replace("places:\n", "places:\n  - { id: filter, label: on the filter }\n", StringComparison.Ordinal)
            .Replace("readings:\n", "gauges:\n  - { id: clock, label: time of heating, unit: min }\n\nreadings:\n  - { id: minutes, label: Time of heating, unit: min, instrument: clock, gauge: clock, resolution: 1, spread: 0.1, tolerance: 0, standing: judgement }\n", StringComparison.Ordinal)
            .Replace("procedure:\n", "arms:\n  - { id: covered, label: lid kept on, set: { smoke: { fixed: 0 } }, standing: judgement }\n\nprocedure:\n  - set: { gauge: clock, to: 10 }\n  - read: minutes\n  - move: { from: inside, to: filter, materials: [oxide], share: 0 }\n  - gain: { mass: 0, in: filter }\n", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text, "f.yaml");
        Assert.Empty(reading.Faults);
        Practical practical = reading.Practical!;
        Assert.Equal("clock", practical.Reading("minutes").Gauge);
        Assert.Equal(Instrument.Clock, practical.Reading("minutes").Instrument);
        Assert.Equal("smoke", practical.Arms[0].Set[0].Parameter);
        Assert.Equal(["inside", "filter"], practical.Procedure.OfType<MoveEvent>().Single().PlacesChanged);
        Assert.Equal("clock", practical.Procedure.OfType<SetEvent>().Single().Gauge);
        Assert.Equal(["filter"], practical.Procedure.OfType<GainEvent>().Single().PlacesChanged);
    }
}
