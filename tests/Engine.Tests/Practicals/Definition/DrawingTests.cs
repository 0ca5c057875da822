using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>The drawings of a practical: what its file says of them, and its faults where they stand.</summary>
public sealed class DrawingTests
{
    private const string Burner = "under: { part: burner, flame: true }";
    private const string Lid = "on: { part: lid, ajar: true, label: 'lid, ajar' }";
    private const string Ribbon = "in: { part: ribbon, label: magnesium ribbon }";
    private const string Steps = "steps: [gentle-start, burn, finish, reheat]";

    [Theory]
    [InlineData(Burner, "under: { part: bruner, flame: true }", "bruner", "'bruner' is not understood; expected mat, tripod, triangle, gauze, burner, spirit-burner, cap, candle, heat, crucible, lid, basin, beaker, can, flask, tube, reduction-tube, gas, jet, filter, jar, cover, bottle, stopper, plug, clamp, balance, leads, supply, ammeter, ...; did you mean burner?")]
    [InlineData(Burner, "under: stove", "stove", "'stove' is not understood; expected mat, tripod")]
    [InlineData(Burner, "under: crucible", "crucible\n        on:", "a crucible cannot be under a tripod; expected burner, heat")]
    [InlineData(Burner, "under: [burner, heat]", "heat]\n        on:", "there is one part at most under a tripod, and a burner is there already, on line")]
    [InlineData(Burner, "under: { part: burner, lit: true }", "lit: true", "'lit' is no key of a burner; expected part, label, flame")]
    [InlineData(Burner, "under: { part: burner, flame: yes }", "yes }", "where true or false was expected")]
    [InlineData(Burner, "under: { flame: true }", "{ flame: true }", "a part of a drawing lacks the key 'part': one of mat, tripod")]
    [InlineData(Burner, "under: { part: burner, label: '' }", "'' }", "the text is blank")]
    [InlineData(Burner, "under: { part: burner, on: crucible }", "on: crucible }", "'on' is no key of a burner")]
    [InlineData(Burner, "under: { part: burner, label: a burner of which far more is told than fits beside a drawing }", "a burner of which", "a label beside a drawing has at most 60 characters")]
    [InlineData(Burner, "under: { part: burner, label: theburnerthatstandsunderthetripod }", "theburnerthat", "and its longest word 30; say it shorter")]
    [InlineData(Lid, "on: { part: tripod }", "{ part: tripod }", "a tripod cannot be on a crucible; expected lid")]
    [InlineData(Lid, "on: { part: lid, beside: tongs }", "beside: tongs }", "'beside' is no key of a lid")]
    [InlineData(Ribbon, "in: [powder, crystals]", "crystals]", "there is one solid and one liquid at most in a crucible, and powder is there already")]
    [InlineData(Ribbon, "in: { part: powder, level: 1.5 }", "1.5 }", "1.5 stands here; expected a number from 0.05 to 0.9")]
    [InlineData(Ribbon, "in: { part: ribbon, level: 0.4 }", "level: 0.4", "'level' is no key of a ribbon")]
    [InlineData(Ribbon, "in: [[powder]]", "[powder]", "a list stands here, where the keys of a part of a drawing were expected")]
    [InlineData(Steps, "steps: [burning]", "burning]", "there is no step 'burning'")]
    [InlineData("  - id: cooling\n    label", "  - id: heating\n    label", "heating\n    label: Cooling", "the drawing 'heating' is there already, on line")]
    [InlineData("    shows:\n      part: balance", "    shows: []\n    was:\n      part: balance", "[]\n", "'shows' is an empty list; expected what stands on the bench")]
    [InlineData("    shows:\n      part: balance", "    shows:\n      part: triangle", "part: triangle\n      on: { part: crucible, label: cool", "a triangle cannot be on the bench; expected mat, tripod, burner")]
    [InlineData("beside: tongs", "beside: { part: beaker, on: { part: holder, holds: [strip, strip, strip] } }", "strip] }", "there is room for 2 parts held by a holder, and a strip is there already")]
    [InlineData("beside: tongs", "beside: { part: leads, joins: [supply, candle] }", "candle] }", "a candle cannot be joined by leads; expected supply, ammeter, resistor, beaker")]
    [InlineData("beside: tongs", "beside: { part: clamp, holds: { part: reduction-tube, joins: [gas, gas] } }", "gas] }", "there is one part at most joined to a reduction-tube, and gas is there already")]
    [InlineData("label: Cooling on the triangle with the lid on", "caption: Cooling", "id: cooling", "a drawing lacks the key 'label'")]
    public void A_fault_is_named_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);

    [Fact]
    public void A_drawing_of_more_parts_than_can_be_labelled_is_a_fault()
    {
        string row = $"beside: [{string.Join(", ", Enumerable.Repeat("beaker", 9))}]";
        Files.AssertFault(Files.Magnesium, "beside: tongs", row, "id: cooling", "at most 14 parts, so that each can be labelled, and this has 15");
    }

    [Fact]
    public void A_file_says_what_stands_on_in_and_under_what()
    {
        Drawing drawing = BuiltInPracticals.Find(Files.Magnesium)!.Drawings.Single(d => d.Id == "heating");

        Assert.Equal("Heating the magnesium with the lid ajar", drawing.Label);
        Assert.Equal(["gentle-start", "burn", "finish", "reheat"], drawing.Steps);
        DrawnPart tripod = Assert.Single(drawing.Shows).Other(DrawnPlace.On)!;
        DrawnPart crucible = tripod.Other(DrawnPlace.On)!.Other(DrawnPlace.On)!;
        Assert.True(tripod.Other(DrawnPlace.Under)!.State.Flame);
        Assert.Equal("magnesium ribbon", crucible.Other(DrawnPlace.In)!.Label);
        Assert.True(crucible.Other(DrawnPlace.On)!.State.Ajar);
        Assert.Equal(
            [Apparatus.Mat, Apparatus.Tripod, Apparatus.Triangle, Apparatus.Crucible, Apparatus.Lid, Apparatus.Ribbon, Apparatus.Burner],
            drawing.Parts.Select(p => p.Kind));
        Assert.Null(crucible.Other(DrawnPlace.Beside));
    }

    [Theory]
    [InlineData("beside: tongs", "beside: [tongs, { part: beaker, in: [liquid, crystals] }]")]
    [InlineData("beside: tongs", "beside: { part: clamp, holds: { part: filter, in: liquid }, under: { part: beaker, in: { part: liquid, level: 0.2 } } }")]
    [InlineData("      on: { part: crucible, label: cool crucible,", "      on:\n        - part: crucible\n          label: cool crucible\n          in: [liquid]\n      beside: { part: crucible,")]
    [InlineData("beside: tongs", "beside: { part: leads, joins: [supply, ammeter, { part: beaker, in: liquid, on: { part: holder, holds: [strip, strip] } }] }")]
    [InlineData("beside: tongs", "beside: { part: clamp, holds: { part: reduction-tube, in: powder, joins: gas, on: jet }, under: { part: spirit-burner, on: cap } }")]
    [InlineData("    steps: [cool]\n", "")]
    public void Parts_may_be_written_as_words_keys_or_lists(string from, string to)
    {
        PracticalReading reading = PracticalReader.Read(Files.Changed(Files.Magnesium, from, to), "f.yaml");
        Assert.Empty(reading.Faults);
        Assert.Equal(3, reading.Practical!.Drawings.Count);
    }

    [Fact]
    public void The_deepest_drawing_may_be_written_with_a_list_at_each_place()
    {
        const string Lists = "shows: [ { part: mat, on: [ { part: tripod, on: [ { part: triangle, on: [ { part: crucible, in: [ { part: powder } ] } ] } ] } ] } ]\n    was:";
        IReadOnlyList<DefinitionFault> faults = Files.Faults(Files.Magnesium, "shows:", Lists);
        Assert.StartsWith("'was' is no key of a drawing", Assert.Single(faults).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_practical_without_drawings_has_none()
    {
        string text = Files.Text(Files.Magnesium);
        int from = text.IndexOf("\ndrawings:", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text[..from] + text[text.IndexOf("\nanswers:", StringComparison.Ordinal)..], "f.yaml");
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Practical!.Drawings);
    }

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_shipped_practical_draws_what_is_weighed_and_shows_no_flame_while_it_cools(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;

        Assert.InRange(practical.Drawings.Count, 1, 6);
        Assert.Contains(practical.Drawings, d => d.Parts.Any(p => p.Kind == Apparatus.Balance));
        Assert.All(practical.Drawings.Where(d => d.Steps.Contains("cool")), d => Assert.DoesNotContain(d.Parts, part => part.State.Flame));
        // What burns on paper needs a flame in the kit.
        Assert.True(practical.Drawings.All(d => d.Parts.All(p => !p.State.Flame)) || practical.Kit.Any(k => k.Flame));
    }
}
