using System.Text;
using Calx.Practicals.Definition;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>Whatever stands in a file, reading it ends soon, throws nothing and says what is wrong.</summary>
public sealed class HostileFileTests
{
    [Theory]
    [InlineData("", 1, 1, "the file is empty")]
    [InlineData(" \n\n", 1, 1, "the file is empty")]
    [InlineData("practical: [a,\nb\n", 1, 12, "this is not YAML: a bracket is not closed")]
    [InlineData("a: b\n c: d: e\n", 2, 2, "this line is indented by 1 space, which fits no line above it")]
    [InlineData("a:\n  - b: 1\n    c: 2\n  d: 3\n", 4, 3, "this line is indented by 2 spaces, which fits no line above it; keys of one entry begin below each other, here after 4 spaces")]
    [InlineData("a:\n  - b: 1\n    c: [x,\n        y]\n     d: 3\n", 5, 6, "this line is indented by 5 spaces, which fits no line above it; keys of one entry begin below each other, here after 4 spaces")]
    [InlineData("a: b\n\tc: d\n", 2, 1, "lines are indented with spaces, and this is a tab")]
    [InlineData("title: a\0b", 1, 9, "this is no text file: it holds a control character")]
    [InlineData("practical: &x a", 1, 12, "an anchor (&) is not read")]
    [InlineData("practical: *x", 1, 12, "an alias (*) is not read")]
    [InlineData("practical: !!int a", 1, 12, "a tag (!) is not read")]
    [InlineData("a: b\n---\nc: d", 2, 1, "a second document starts here")]
    [InlineData("? [a, b]\n: c", 1, 3, "a key is one word")]
    [InlineData("just some words", 1, 1, "'just some words' stands here, where the keys of a practical were expected")]
    [InlineData("a: [[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]", 1, 17, "this is nested deeper than anything in a practical")]
    public void A_file_that_is_none_is_told_from_where_it_goes_wrong(string text, int line, int column, string reason)
    {
        PracticalReading reading = PracticalReader.Read(text, "f.yaml");
        Assert.Null(reading.Practical);
        Assert.Contains(
            reading.Faults,
            f => f.Line == line && f.Column == column && f.Reason.StartsWith(reason, StringComparison.Ordinal));
    }

    private const string Stands = "stands: after - before";
    private const string Difference = "difference: (after - before) - M(O) / M(Mg) * (before - empty)";
    private const string Gain = "formula: after - before }";

    /// <summary>What has no value for any readings is a fault of the file with its place, and nothing that a command stumbles over later.</summary>
    [Theory]
    [InlineData(Stands, "stands: 1/0", "1/0", "division by zero, in '1 / 0'")]
    [InlineData(Stands, "stands: 1/0 + after - before", "1/0", "division by zero, in '1 / 0'")]
    [InlineData(Stands, "stands: (after - before)/(1 - 1)", "(after - before)/(1", "division by zero")]
    [InlineData(Stands, "stands: 5", "5\n    aliases: [oxygen", "a ready-made mass stands for a sum or difference of readings")]
    [InlineData(Difference, "difference: after/0", "after/0", "division by zero, in 'after / 0'")]
    [InlineData(Difference, "difference: after - before + 1/0", "1/0", "division by zero")]
    [InlineData(Difference, "difference: (after - before) / (M(O) - M(O))", "(after - before) / (M(O)", "division by zero")]
    [InlineData(Difference, "difference: (after - before) * ln(0)", "ln(0)", "ln of 0 has no value")]
    [InlineData(Difference, "difference: after - before - 1e308*1e308*before", "1e308*1e308", "too large to compute with")]
    [InlineData(Gain, "formula: after/(before - before) }", "after/(before - before)", "this formula has no value, whatever the readings: division by zero")]
    [InlineData(Gain, "formula: sqrt(-1) * after }", "sqrt(-1)", "square roots take numbers of at least 0")]
    public void What_never_has_a_value_is_a_fault_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);

    /// <summary>A logarithm of a difference has values for readings in one order and none in the other: that is no fault.</summary>
    [Theory]
    [InlineData("formula: ln(after - before) }")]
    [InlineData("formula: ln(before - after) }")]
    [InlineData("formula: sqrt((after - before) * (before - empty)) }")]
    [InlineData("formula: ln((after - empty) / (before - empty)) / (M(MgO) - M(Mg)) }")]
    public void What_has_a_value_for_some_readings_is_none(string to) =>
        Assert.DoesNotContain(Files.Faults(Files.Magnesium, Gain, to), f => f.Reason.Contains("has no value", StringComparison.Ordinal));

    [Theory]
    [InlineData("say: 'the pupil's dish'\n")]
    [InlineData("label: iron: filings\n")]
    [InlineData("{ formula: (after - before) : (before - empty) }\n")]
    [InlineData("{ label: dish # 3 }\n")]
    public void What_is_not_YAML_is_told_with_what_usually_makes_it_so(string text)
    {
        DefinitionFault fault = Assert.Single(PracticalReader.Read(text, "f.yaml").Faults);

        Assert.StartsWith("this is not YAML: ", fault.Reason, StringComparison.Ordinal);
        Assert.Contains("an apostrophe inside '...' is written twice; a text with a colon and a space, or with #, needs quotes; division is /, not ':'", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Aliases_that_would_multiply_are_refused_one_by_one()
    {
        var text = new StringBuilder("a: &a [x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c <= 'j'; c++)
        {
            text.Append(c).Append(": &").Append(c).Append(" [");
            text.AppendJoin(',', Enumerable.Repeat("*" + (char)(c - 1), 9)).Append("]\n");
        }

        IReadOnlyList<DefinitionFault> faults = PracticalReader.Read(text.ToString(), "f.yaml").Faults;
        Assert.Equal(81, faults.Count(f => f.Reason.StartsWith("an alias", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_file_beyond_a_mebibyte_is_refused_by_its_size()
    {
        string text = "# " + new string('x', 1 << 20);
        DefinitionFault fault = Assert.Single(PracticalReader.Read(text, "f.yaml").Faults);
        Assert.StartsWith("the file is larger than 1 MiB", fault.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{")]
    [InlineData("- ")]
    [InlineData("a: ")]
    [InlineData("? ")]
    [InlineData("a\n")]
    [InlineData("'")]
    [InlineData("!a ")]
    [InlineData("x: y\n")]
    public void Half_a_mebibyte_of_one_sign_ends_in_a_fault(string sign)
    {
        string text = string.Concat(Enumerable.Repeat(sign, (1 << 19) / sign.Length));
        Assert.NotEmpty(PracticalReader.Read(text, "f.yaml").Faults);
    }

    [Fact]
    public void A_list_without_end_is_refused_at_its_first_entry_too_many()
    {
        string text = "materials:\n" + string.Concat(Enumerable.Range(1, 20_000).Select(i => $"  - {{ id: m{i} }}\n"));
        DefinitionFault fault = Assert.Single(PracticalReader.Read(text, "f.yaml").Faults);
        Assert.Equal("f.yaml:202:5: there are more than 200 entries here, which no practical needs", fault.ToString());
    }

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_told_with_their_place()
    {
        byte[] bytes = [.. "practical: a\ntitle: für "u8, 0xE9, (byte)'\n'];
        DefinitionFault fault = Assert.Single(PracticalReader.Read(bytes, "f.yaml").Faults);
        Assert.Equal("f.yaml:2:12: this is not UTF-8 text; save the file as UTF-8", fault.ToString());
    }

    [Fact]
    public void A_byte_order_mark_changes_nothing()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Files.Text(Files.Magnesium))];
        Assert.Empty(PracticalReader.Read(bytes, "f.yaml").Faults);
    }

    [Fact]
    public void A_line_dropped_doubled_swapped_or_garbled_never_throws()
    {
        Gen<string> mutated =
            from id in Gen.OneOf(BuiltInPracticals.Ids.ToArray())
            from changes in Gen.Select(Gen.Int[0, 3], Gen.Int[0, 300], Gen.Int[0, 120], Gen.String[Odd, 0, 4]).Array[1, 3]
            select changes.Aggregate(Files.Text(id), (text, c) => Mutate(text, c.Item1, c.Item2, c.Item3, c.Item4));
        mutated.Always(
            text =>
            {
                PracticalReading reading = PracticalReader.Read(text, "f.yaml");
                int lines = text.Count(c => c == '\n') + 1;
                (int, int)[] places = [.. reading.Faults.Select(f => (f.Line, f.Column))];
                Assert.Equal(reading.Practical is null, places.Length > 0);
                Assert.Equal(places.Order(), places);
                Assert.All(places, p => Assert.InRange(p.Item1, 1, lines + 1));
            },
            iter: 400);
    }

    private static readonly Gen<char> Odd = Gen.Char["{}[],:#&*!|>'\"%@`-?0aé1 \t\n.~\u00A0\uD83D"];

    private static string Mutate(string text, int kind, int line, int column, string odd)
    {
        List<string> lines = [.. text.Split('\n')];
        int at = line % lines.Count;
        string old = lines[at];
        int cut = column % (old.Length + 1);
        switch (kind)
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, old);
                break;
            case 2:
                lines[at] = old[..cut] + odd + old[cut..];
                break;
            default:
                lines[at] = old[..cut] + odd;
                break;
        }

        return string.Join('\n', lines);
    }
}
