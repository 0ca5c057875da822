using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>Faults of what helps to tell causes apart: one change of a good file, where it must be found, and what must
/// be said.</summary>
public sealed class AdviceFaultTests
{
    private const string Difference = "difference: (after - before) - M(O) / M(Mg) * (before - empty)";
    private const string Reweigh = "kind: reweigh, minutes: 8";
    private const string Without = "kind: without-part, part: lid, minutes: 2";
    private const string Look = "kind: look, observation: smoke-marks, minutes: 1";
    private const string Fired = "rates: { damp-vessel: 0.01 }";
    private const string Points = "points: [[6, 78], [9.3, 38], [13, 20], [17, 10], [21, 5], [26, 2.6]]";
    private const string Smoke = "likelihood: { product-lost: 0.7, otherwise: 0.25 }";

    [Theory]
    // When a group is as expected, and what one more heating is worth.
    [InlineData(Difference, "difference: after * before", "after * before", "here the effect of one reading depends on another; expected a sum of readings with fixed factors")]
    [InlineData(Difference, "difference: (after - before) / (before - empty)", "(after - before) / (before - empty), div", "expected a sum of readings with fixed factors")]
    [InlineData(Difference, "difference: abs(after - before)", "abs(after", "expected a sum of readings with fixed factors")]
    [InlineData(Difference, "difference: M(O) / M(Mg)", "M(O) / M(Mg), div", "the key difference rests on no reading; expected a sum of readings")]
    [InlineData(Difference, "difference: after - before - M(Mq) * empty", "Mq", "there is no element Mq")]
    [InlineData(Difference, "difference: after - befor", "befor,", "there is no reading 'befor'; expected empty, before, after; did you mean before?")]
    [InlineData(Difference, "difference: [after]", "[after]", "where a formula over reading was expected")]
    [InlineData(Difference + ", ", "", "{ divisions: 2, share: 0.05", "the rule of what is expected lacks the key 'difference'")]
    [InlineData("divisions: 2, share: 0.05", "divisions: 0, share: 0.05", "0, share: 0.05", "expected a number above 0")]
    [InlineData("divisions: 2, share: 0.05", "divisions: 2, share: 5", "5, standing", "5 stands here; expected a number")]
    [InlineData("divisions: 2, share: 0.05, standing: judgement", "divisions: 2, share: 0.05", "{ difference", "lacks the key 'standing'")]
    [InlineData("decision: { matters: 0.10", "decision: { matters: -0.10", "-0.10", "expected a number above 0")]
    [InlineData("worthMinutes: 60", "worthminutes: 60", "worthminutes", "did you mean worthMinutes?")]
    // Slips of the pen.
    [InlineData("droppedZero: 0.15", "droppedZero: 0.25", "{ swapped: 0.35", "the shares of the slips of the pen add up to 1")]
    [InlineData(", droppedZero: 0.15", "", "{ swapped: 0.35", "the shares of the slips of the pen add up to 1")]
    [InlineData("droppedZero: 0.15", "droppedZeros: 0.15", "droppedZeros", "did you mean droppedZero?")]
    [InlineData("zero: { shift:", "zero: { reading: aftr, shift:", "aftr", "there is no reading 'aftr'; expected empty, before, after")]
    [InlineData("    warm:\n      reading: after\n", "    warm:\n", "excessInKelvin", "the effect 'warm' lacks the key 'reading': the id of a reading")]
    [InlineData("gain: { reading: after, ", "gain: { ", "{ mass: {", "the effect 'gain' lacks the key 'reading': the id of a reading")]
    // What may be seen.
    [InlineData(", " + Smoke, "", "{ id: smoke-seen", "an observation lacks the key 'likelihood': probabilities, cause to probability, and 'otherwise'")]
    [InlineData(Smoke, "likelihood: { product-lost: 0.7 }, stop: true", "{ product-lost: 0.7 }, stop", "a likelihood lacks the key 'otherwise'")]
    [InlineData("stop: true, standing", "stop: yes, standing", "yes, standing", "'yes' stands here, where true or false was expected")]
    [InlineData("teacherOnly: true", "teachersOnly: true", "teachersOnly", "did you mean teacherOnly?")]
    [InlineData("aliases: [smoke, white smoke]", "aliases: smoke", "smoke, likelihood", "where a list was expected, each entry a text")]
    // What can still be done.
    [InlineData(Reweigh, "kind: rewigh, minutes: 8", "rewigh", "'rewigh' is not understood; expected reheat, reweigh, reread, zero, without-part, look; did you mean reweigh?")]
    [InlineData(Reweigh, "minutes: 8", "{ id: cool-and-weigh", "an action lacks the key 'kind': one of reheat, reweigh, reread, zero, without-part, look")]
    [InlineData(Reweigh, "kind: reweigh, minutes: 0", "0, standing: judgement }\n  - { id: read-again", "0 stands here; expected a number above 0")]
    [InlineData(Reweigh, "kind: reweigh", "{ id: cool-and-weigh", "an action lacks the key 'minutes': a number above 0")]
    [InlineData(Without, "kind: without-part, minutes: 2", "{ id: weigh-without-lid", "an action lacks the key 'part': the id of the part")]
    [InlineData(Without, "kind: without-part, part: lit, minutes: 2", "lit,", "there is no part 'lit'; expected crucible, lid; did you mean lid?")]
    [InlineData(Look, "kind: look, minutes: 1", "{ id: look-for-smoke-marks", "an action lacks the key 'observation': the id of the observation")]
    [InlineData(Look, "kind: look, observation: smoke-mark, minutes: 1", "smoke-mark,", "there is no observation 'smoke-mark'; expected smoke-seen")]
    [InlineData(Look, "kind: look, observation: ammonia-smell, minutes: 1", "ammonia-smell, minutes", "'ammonia-smell' is for the teacher alone, and so is looking for it; expected teacherOnly: true")]
    [InlineData(Reweigh, "kind: reweigh, part: lid, minutes: 8", "lid, minutes: 8", "'part' belongs to an action of the kind 'without-part' alone; leave it off, or write kind: without-part")]
    [InlineData(Reweigh, "kind: reweigh, observation: smoke-marks, minutes: 8", "smoke-marks, minutes: 8", "'observation' belongs to an action of the kind 'look' alone; leave it off, or write kind: look")]
    [InlineData("id: check-zero", "id: read-again", "read-again, label: see", "the action 'read-again' is there already")]
    [InlineData("\nactions:\n", "\nactions: none\nactionList:\n", "none\n", "'none' stands here, where a list was expected, each entry an action")]
    // What is said of a class.
    [InlineData(Fired, "rates: { overheated: 0.01 }", "overheated: 0.01", "there is no fault of this practical with the cause 'overheated'")]
    [InlineData(Fired, "rates: { damp-vessel: 1.2 }", "1.2 }", "1.2 stands here; expected a number from 0 to 1")]
    [InlineData(Fired, "rates: {}", "{ id: fired", "this condition changes nothing; expected rates, { cause: share }, or set, { parameter: law }, or both")]
    [InlineData(Fired, "set: { dampness: { fixed: 0 } }", "dampness", "there is no parameter 'dampness'; expected sample")]
    [InlineData(Fired, "set: { damp: { fixd: 0 } }", "fixd", "did you mean fixed?")]
    [InlineData(Fired, "set: {}", "{}, standing: judgement }\n  - { id: new", "no parameter is set here; expected at least one, with its law")]
    [InlineData("id: new-crucibles", "id: fired", "fired, label: the crucibles are new", "the condition 'fired' is there already")]
    // How warm it still is.
    [InlineData(Points, "points: [[6, 78]]", "[[6, 78]]", "a list of 1 stands here; expected at least two points, [minutes, kelvin above the room]")]
    [InlineData(Points, "points: 6", "6, relativeSpread", "where a list was expected, each entry [minutes, kelvin above the room]")]
    [InlineData(Points + ", ", "", "{ reading: after, relativeSpread", "how things cool lacks the key 'points': at least two points")]
    [InlineData(Points, "points: [[6, 78], [9.3]]", "[9.3]", "a list of 1 stands here; expected [minutes, kelvin above the room]")]
    [InlineData(Points, "points: [[6, 78], [6, 38]]", "[6, 38]", "expected minutes from 0 that rise from point to point, and kelvins above 0 that fall")]
    [InlineData(Points, "points: [[6, 78], [9.3, 78]]", "[9.3, 78]", "kelvins above 0 that fall")]
    [InlineData(Points, "points: [[6, 78], [9.3, 0]]", "[9.3, 0]", "kelvins above 0 that fall")]
    [InlineData(Points, "points: [[-1, 78], [9.3, 38]]", "[-1, 78]", "expected minutes from 0")]
    [InlineData("cooling: { reading: after", "cooling: { reading: affter", "affter", "there is no reading 'affter'; expected empty, before, after; did you mean after?")]
    [InlineData("relativeSpread: 0.3", "relativeSpread: 0", "0, standing: computed }\n\n# Times", "expected a number above 0")]
    public void A_fault_is_named_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);

    [Fact]
    public void Reheating_needs_something_that_the_procedure_repeats()
    {
        string text = Files.Text(Files.Magnesium);
        int start = text.IndexOf("  - repeat:\n", StringComparison.Ordinal);
        int end = text.IndexOf("\nquantities:", StringComparison.Ordinal);
        text = text[..start] + "  - read: after\n" + text[end..];
        (int line, int column) = Files.PlaceOf(text, "reheat, minutes: 18");
        // Besides the parameters that nothing uses any more.
        DefinitionFault fault = Assert.Single(PracticalReader.Read(text, "f.yaml").Faults, f => f.Reason.Contains("expected a 'repeat' event there", StringComparison.Ordinal));
        Assert.Equal((line, column), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_kind_that_cannot_be_read_is_told_once()
    {
        DefinitionFault fault = Assert.Single(Files.Faults(Files.Magnesium, Without, "kind: without-lid, part: lid, minutes: 2"));
        Assert.StartsWith("'without-lid' is not understood", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_teacher_may_look_for_what_is_the_teachers_alone()
    {
        string text = Files.Changed(Files.Magnesium, Look, "kind: look, observation: ammonia-smell, minutes: 1, teacherOnly: true");
        ActionDefinition look = PracticalReader.Read(text, "f.yaml").Practical!.Actions.Single(a => a.Id == "look-for-smoke-marks");
        Assert.True(look.TeacherOnly);
        Assert.Equal("ammonia-smell", look.Observation);
    }
}
