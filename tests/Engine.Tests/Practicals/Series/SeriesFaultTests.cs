using Calx.Engine.Tests.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Series;

/// <summary>Faults of the section on mass against time are told where they stand.</summary>
public sealed class SeriesFaultTests
{
    private const string Id = "marble-and-acid";

    [Theory]
    [InlineData("  until: 10\n", "  until: 10.2\n", "10.2", "4 to 200 whole gaps of 'every'")]
    [InlineData("  from: start\n", "  from: begin\n", "begin\n", "there is no reading 'begin'")]
    [InlineData("  starts: gas-held-back ", "  starts: later ", "gas-held-back }", "expected 'starts: gas-held-back' in the series")]
    [InlineData("  order: first  ", "  order: fist  ", "fist  ", "did you mean first?")]
    [InlineData("is: half-life }", "is: halflife }", "halflife }", "did you mean half-life?")]
    [InlineData("rate: { order: first, halfLife: half, minutes: minutes }", "rate: { order: third, halfLife: half, minutes: minutes }", "third", "expected first, second")]
    [InlineData("rate: { order: first, halfLife: half, minutes: minutes }", "rate: { order: first, halfLife: half }", "{ order: first, halfLife: half }", "lacks the key 'minutes'")]
    [InlineData("formula: startRate", "formula: rateStart", "rateStart, marks", "the answer 'rateStart' cannot be worked out from itself")]
    [InlineData("test: { order: first }", "test: { order: one }", "one }", "expected zeroth, first, second")]
    public void A_fault_is_told_where_it_stands(string from, string to, string marker, string reason) => Files.AssertFault(Id, from, to, marker, reason);
}
