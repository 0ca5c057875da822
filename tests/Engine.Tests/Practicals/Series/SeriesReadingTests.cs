using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Series;

/// <summary>Mass against time as teachers keep it. Headings are common practice, no source.</summary>
public sealed class SeriesReadingTests
{
    [Theory]
    [InlineData("0 min", "0.5 min", "1 min", "10 min")]
    [InlineData("0 s", "30 s", "60 s", "600 s")]
    [InlineData("Mass at 0 min / g", "Mass at 30 s / g", "mass after 1 min (g)", "Mass at 10 minutes / g")]
    [InlineData("t = 0 s", "t = 30 s", "1 min 0 s", "600 sec")]
    public void A_column_for_each_time_is_read_in_any_unit(params string[] headings)
    {
        ClassReadings read = Marble.Read(
            "group | flask | with acid | " + string.Join(" | ", headings),
            "1 | 78.40 | 119.06 | 136.50 | 136.33 | 136.19 | 135.66");

        GroupReadings group = read.Groups.Single();
        Assert.Equal(["0", "0.5", "1", "10"], group.Series!.Points.Select(p => p.Time.ToString()));
        Assert.Equal(["136.50", "136.33", "136.19", "135.66"], group.Series.Points.Select(p => p.Value.ToString()));
        Assert.Equal(("136.50", "135.66"), (group.Find("start")!.Value.ToString(), group.Find("end")!.Value.ToString()));
        Assert.Empty(read.Rejected);
    }

    [Fact]
    public void Bare_numbers_beside_a_unit_are_times()
    {
        ClassReadings read = Marble.Read("Time / s | 0 | 30 | 60 | 90", "group 1 | 136.50 | 136.33 | 136.19 | 136.08");

        Assert.Equal(["0", "0.5", "1", "1.5"], read.Groups.Single().Series!.Points.Select(p => p.Time.ToString()));
    }

    [Fact]
    public void A_row_for_each_point_is_read_with_the_times_as_they_are()
    {
        ClassReadings read = Marble.Read(
            "group | time / s | mass / g",
            "A | 0 | 136.50", "A | 20 | 136.38", "A | 65 | 136.17", "A | 1:30 | 136.08", "A | 600 | 135.66",
            "B | 15 | 141.22", "B | 45 | 141.02", "B | soon | 140.90", "B | 90 | 14O.80");

        Assert.Equal(["0", "0.333333", "1.083333", "1.5", "10"], read.Groups[0].Series!.Points.Select(p => p.Time.ToString()));
        Assert.Equal(("136.50", "135.66"), (read.Groups[0].Find("start")!.Value.ToString(), read.Groups[0].Find("end")!.Value.ToString()));
        Assert.Equal([(9, 2), (10, 3)], read.Rejected.Select(r => (r.Cell.Row, r.Cell.Column)));
    }

    [Fact]
    public void Mass_lost_stands_for_the_mass_and_a_missing_point_is_missing()
    {
        ClassReadings read = Marble.Read(
            "group | flask | with acid | Mass lost at 30 s / g | Mass lost at 1 min / g | Mass lost at 1.5 min / g | Mass lost at 10 min / g",
            "1 | 78.40 | 119.06 | 0.17 |  | 0.42 | 0.84");

        GroupReadings group = read.Groups.Single();
        Assert.True(group.Series!.IsLoss);
        Assert.Equal(["0.5", "1.5", "10"], group.Series.Points.Select(p => p.Time.ToString()));
        Assert.Equal("0.84", group.Find("lostColumn")!.Value.ToString());
    }

    [Fact]
    public void A_cell_that_is_no_mass_is_named_and_the_others_are_kept()
    {
        ClassReadings read = Marble.Read(
            "group | flask | with acid | 0 min | 0.5 min | 1 min | 10 min",
            "1 | 78.40 | 119.06 | 136.50 | missed | 136.19 | 135.66");

        RejectedCell cell = Assert.Single(read.Rejected);
        Assert.Equal((2, 5, "0.5 min", "missed"), (cell.Cell.Row, cell.Cell.Column, cell.Heading, cell.Text));
        Assert.Equal(3, read.Groups.Single().Series!.Points.Count);
    }
}
