using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Calx.Practicals.Definition;
using Json.Schema;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>The JSON schema, which editors use, and the reader agree on the shape of a file.</summary>
public sealed partial class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(Files.Schema);

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Fact]
    public void The_schema_is_itself_valid() =>
        Assert.True(MetaSchemas.Draft202012.Evaluate(Element(JsonNode.Parse(Files.Schema)!)).IsValid);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_shipped_practical_satisfies_the_schema(string id) => Assert.True(Satisfies(Files.Text(id)));

    [Theory]
    [InlineData("form: ribbon", "from: ribbon")]
    [InlineData("version: 2", "version: 1.5")]
    [InlineData("version: 2", "version: 0")]
    [InlineData("title: Burning magnesium in a crucible", "title: 1984")]
    [InlineData("    unit: g\n    pan: { parts", "    pan: { parts")]
    [InlineData("air: true", "air: 1")]
    [InlineData("expect: rises", "expect: up")]
    [InlineData("kind: difference", "kind: sum")]
    [InlineData("rate: 0.28", "rate: 1.3")]
    [InlineData("rate: 0.28", "rate: often")]
    [InlineData("- id: after\n", "- id: after2\n")]
    [InlineData("{ id: massMagnesium,", "{ id: min,")]
    [InlineData("cause: misread", "cause: human-error")]
    [InlineData("    off: { part: lid }\n", "")]
    [InlineData("    off: { part: lid }\n", "    off: { part: lid }\n    pen: { swapped: 1, wrongDigit: 0, wholeGram: 0 }\n")]
    [InlineData("- wet:", "- damp:")]
    [InlineData("- read: empty", "- { read: empty, dry: { in: inside, share: 1 } }")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { normal: [0.24] }")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { gauss: [0.24, 0.048] }")]
    [InlineData("minutes: [4, 8, 12]", "minutes: [4, 8]")]
    [InlineData("    source: E. Blade", "    # source: E. Blade")]
    [InlineData("standing: literature", "standing: guess")]
    [InlineData("likelihood: { product-lost: 0.7, otherwise: 0.25 }", "likelihood: { product-lost: 0.7 }")]
    [InlineData("largestSample: 0.30", "largestSample: 0")]
    [InlineData("largestSample: 0.30", "groups: 0, largestSample: 0.30")]
    [InlineData("largestSample: 0.30", "groups: 1.5, largestSample: 0.30")]
    [InlineData("test: { rises: massChange }", "test: { stays: { quantity: massChange } }")]
    [InlineData("test: { rises: massChange }", "test: { stays: { quantity: massChange, within: 0 } }")]
    [InlineData("test: { rises: massChange }", "test: { stays: { quantity: massChange, within: 0.02, share: 1 } }")]
    [InlineData("control: do not blow on the powder", "note: do not blow on the powder")]
    [InlineData("formula: { elements: { Mg: sampleMass, O: massChange }", "formula: { elements: { Mg: sampleMass }")]
    [InlineData("difference: (after", "departure: (after")]
    [InlineData("divisions: 2, share: 0.05", "divisions: 2, share: 0")]
    [InlineData("decision: { matters: 0.10", "decision: { matters: 0")]
    [InlineData("droppedZero: 0.15", "droppedZeros: 0.15")]
    [InlineData("zero: { shift:", "zero: { amount:")]
    [InlineData(", likelihood: { product-lost: 0.7, otherwise: 0.25 }", ", stop: false")]
    [InlineData("stop: true", "stop: 1")]
    [InlineData("aliases: [smoke, white smoke]", "aliases: smoke")]
    [InlineData("kind: reweigh, minutes: 8", "kind: rewigh, minutes: 8")]
    [InlineData("kind: reweigh, minutes: 8", "kind: reweigh, minutes: 0")]
    [InlineData("kind: reweigh, minutes: 8", "kind: reweigh, part: lid, minutes: 8")]
    [InlineData("kind: without-part, part: lid", "kind: without-part")]
    [InlineData("kind: look, observation: smoke-marks", "kind: look")]
    [InlineData("rates: { damp-vessel: 0.01 }", "rates: {}")]
    [InlineData("rates: { damp-vessel: 0.01 }", "rates: { dampness: 0.01 }")]
    [InlineData("rates: { damp-vessel: 0.01 }", "rates: { damp-vessel: 2 }")]
    [InlineData("[[6, 78], [9.3, 38],", "[[-6, 78], [9.3, 38],")]
    [InlineData("[26, 2.6]]", "[26, 0]]")]
    [InlineData("[26, 2.6]]", "[26]]")]
    [InlineData("relativeSpread: 0.3", "spread: 0.3")]
    [InlineData("on: { part: lid, ajar: true", "on: { part: hat, ajar: true")]
    [InlineData("on: { part: lid, ajar: true", "on: { part: lid, open: true")]
    [InlineData("{ part: burner, flame: true }", "{ flame: true }")]
    [InlineData("{ part: burner, flame: true }", "[burner, stove]")]
    [InlineData("{ part: ribbon, label: magnesium ribbon }", "{ part: powder, level: 0.95 }")]
    [InlineData("label: Cooling on the triangle with the lid on", "caption: Cooling")]
    public void Schema_and_reader_both_refuse_a_wrong_shape(string from, string to)
    {
        string text = Files.Changed(Files.Magnesium, from, to);
        Assert.False(Satisfies(text));
        Assert.NotEmpty(PracticalReader.Read(text, "f.yaml").Faults);
    }

    [Theory]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { exponential: 0.24 }")]
    [InlineData("law: { normal: [0.24, 0.048] }", "law: { lognormal: [0.24, 0.2] }")]
    [InlineData("formula: Mg, form: ribbon cut from a coil", "formula: Mg")]
    [InlineData("    repeatLabel: Mass after reheating\n", "")]
    [InlineData("dry: { in: inside, share: 1 }", "dry: { in: inside, share: 0.5 * burnt }")]
    [InlineData("until: constant-mass", "until: all-rounds")]
    [InlineData("- { id: gains,", "- { id: 'gains',")]
    [InlineData("zero: { shift:", "zero: { reading: after, shift:")]
    [InlineData("rates: { damp-vessel: 0.01 }", "set: { damp: { fixed: 0 } }")]
    [InlineData(", likelihood: { product-lost: 0.7, otherwise: 0.25 }", ", stop: true")]
    [InlineData("likelihood: { product-lost: 0.7, otherwise: 0.25 }", "likelihood: { product-lost: 0.7, otherwise: 0.25 }, stop: true, teacherOnly: true")]
    [InlineData("[26, 2.6]]", "[26, 2.6], [40, 0.5]]")]
    [InlineData("kind: reweigh, minutes: 8", "kind: reweigh, minutes: 7.5, teacherOnly: true")]
    [InlineData("{ part: burner, flame: true }", "burner")]
    [InlineData("{ part: burner, flame: true }", "[heat]")]
    [InlineData("{ part: ribbon, label: magnesium ribbon }", "[liquid, { part: powder, level: 0.2 }]")]
    public void Schema_and_reader_both_accept_another_way_of_writing(string from, string to)
    {
        string text = Files.Changed(Files.Magnesium, from, to);
        Assert.True(Satisfies(text));
        Assert.Empty(PracticalReader.Read(text, "f.yaml").Faults);
    }

    [Fact]
    public void The_schema_knows_every_cause()
    {
        JsonArray known = JsonNode.Parse(Files.Schema)!["$defs"]!["fault"]!["properties"]!["cause"]!["enum"]!.AsArray();
        Assert.Equal(Causes.All, known.Select(c => c!.GetValue<string>()));
    }

    [Fact]
    public void The_schema_knows_every_part_of_a_drawing()
    {
        JsonArray known = JsonNode.Parse(Files.Schema)!["$defs"]!["apparatus"]!["enum"]!.AsArray();
        Assert.Equal(ApparatusRules.Words.Keys, known.Select(c => c!.GetValue<string>()));
    }

    private static bool Satisfies(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return Schema.Evaluate(Element(Json(stream.Documents[0].RootNode)!)).IsValid;
    }

    private static System.Text.Json.JsonElement Element(JsonNode node) =>
        System.Text.Json.JsonDocument.Parse(node.ToJsonString()).RootElement;

    private static JsonNode? Json(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(
            pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Json(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Json)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } flag => JsonValue.Create(flag.Value == "true"),
        YamlScalarNode { Style: ScalarStyle.Plain } plain when Number().IsMatch(plain.Value!)
            => JsonValue.Create(double.Parse(plain.Value!, CultureInfo.InvariantCulture)),
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new ArgumentException($"{node.NodeType} does not occur in a practical.", nameof(node)),
    };

    /// <summary>The number of JSON (RFC 8259, section 6).</summary>
    [GeneratedRegex(@"^-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][+-]?[0-9]+)?$")]
    private static partial Regex Number();
}
