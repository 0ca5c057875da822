using Calx.Chemistry.Elements;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Tables;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Series;

/// <summary>Answers that are read off the student's own curve: an exponential of half-life 1.5 min that loses 0.84 g.</summary>
public sealed class CurveMarkTests
{
    [Theory]
    [InlineData("0.39", "1.5", 3)] // 0.84 ln 2 / 1.5 is 0.388.
    [InlineData("0.42", "1.45", 3)] // A tangent by eye is good to some 15 %.
    [InlineData("0.39 g/min", "1.5 min", 3)]
    [InlineData("0.084", "1.5", 1)] // The whole loss over the whole time is no rate at the start.
    [InlineData("0.39", "5", 2)] // Half of the time is no half-life.
    public void They_are_held_against_the_own_points(string rate, string half, int marks)
    {
        string[] wide = Marble.Wide(t => Marble.Mass(1, t, halfLife: 1.5));
        CellTable table = new(string.Empty,
        [
            CellRow.Of(1, [.. $"student|{wide[0]["group |".Length..]}|rateStart|timeHalf".Split('|').Select(c => c.Trim())]),
            CellRow.Of(2, [.. $"Invented Student|{wide[1]["1 |".Length..]}|{rate}|{half}".Split('|').Select(c => c.Trim())]),
        ]);
        var taken = Assert.IsType<MarkingTable.Taken>(MarkingTableReader.Read([table], Marble.Practical));
        MarkedWork marked = new Marker(Marble.Practical, new MarkingPolicy(), [AtomicWeights.Iupac2024]).Mark(taken.Works).Works.Single();

        Assert.Equal(marks, marked.Answers.Where(a => a.Answer.Id is "rateStart" or "timeHalf").Sum(a => a.Marks));
    }
}
