using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>Tables of classes with other quantities than mass, in the units that teachers write. Factors: 60 s a minute, 3600 s an hour,
/// 273.15 K at 0 °C (SI brochure, 9th edition).</summary>
public class GaugeTableTests
{
    [Theory]
    [InlineData("Current / A", "0.40", "t / s", "1230", "0.40", "1230")]
    [InlineData("I / mA", "400", "t / min", "20.5", "0.400", "1230")]
    [InlineData("Ammeter reading (A)", "0.4", "Time taken / min", "20", "0.4", "1200")]
    [InlineData("current / amps", "0.40", "Time / h", "0.35", "0.40", "1260")]
    [InlineData("current / A", "0.40", "time / s", "20.5 min", "0.40", "1230")]
    public void Times_and_currents_are_converted(string current, string amperes, string time, string clock, string shown, string seconds)
    {
        GroupReadings group = Taken(GaugeBench.Electrolysis, $"group,anode before,cathode before,{current},{time},cathode after,anode after\n"
            + $"G1,11.41,14.43,{amperes},{clock},14.61,11.24\n").Groups[0];

        Assert.Equal(shown, group.Find("current")!.Value.ToString());
        Assert.Equal(seconds, group.Find("time")!.Value.ToString());
    }

    [Theory]
    [InlineData("Temperature at the start / °C", "-2.5", "-2.5")]
    [InlineData("T1 / K", "293.15", "20.00")]
    [InlineData("Start temperature (C)", "19.5", "19.5")]
    public void Temperatures_may_lie_below_zero_and_be_in_kelvin(string heading, string written, string celsius) => Assert.Equal(
        celsius, Taken(GaugeBench.Combustion, $"group,{heading},before,after\nG1,{written},143.27,142.53\n").Groups[0].Find("start")!.Value.ToString());

    [Fact]
    public void A_mass_is_no_time_and_a_time_no_mass()
    {
        ClassReading read = Read(GaugeBench.Electrolysis, "group,cathode before / s,time / g\nG1,14.43,1200\n");

        Assert.IsType<ClassReading.Unreadable>(read);
    }

    [Fact]
    public void Minutes_among_seconds_are_asked_about_and_kept()
    {
        ClassReadings readings = Taken(
            GaugeBench.Electrolysis, "group,time / s,cathode before,cathode after\nG1,1200,14.43,14.61\nG2,1195,12.43,12.61\nG3,20,11.43,11.61\nG4,1210,15.43,15.61\n");

        Assert.Equal("20", readings.Groups[2].Find("time")!.Value.ToString());
        Assert.Contains("'20' is about 60 times smaller than the other readings of its column", Assert.Single(readings.Notes).Text, StringComparison.Ordinal);
    }

    // A thermometer read to halves, and a digital one whose tenths are all there.
    [Theory]
    [InlineData("19.5", "20.0", "0.5")]
    [InlineData("19.3", "20.1", "0.1")]
    [InlineData("19", "20", "1")]
    public void The_step_of_a_thermometer_follows_from_what_was_written(string one, string other, string step)
    {
        ClassReadings readings = Taken(GaugeBench.Combustion, $"group,start temperature / °C,before,after\nG1,{one},143.27,142.53\nG2,{other},143.27,142.53\n");

        Assert.Equal(GaugeBench.Number(step).Value, readings.Balance.ResolutionOf(GaugeBench.Combustion.Reading("start")));
        Assert.Equal(0.01m, readings.Balance.ResolutionInGrams);
    }

    private static ClassReadings Taken(Calx.Practicals.Definition.Practical practical, string csv) =>
        Assert.IsType<ClassReading.Taken>(Read(practical, csv)).Readings;

    private static ClassReading Read(Calx.Practicals.Definition.Practical practical, string csv) => ClassTableReader.Read(
        [new CellTable("", [.. csv.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select((line, i) => CellRow.Of(i + 1, line.Split(',')))])], practical);
}
