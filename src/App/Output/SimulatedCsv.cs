using System.Buffers;
using System.Globalization;
using System.Text;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Output;

/// <summary>An invented class as a file that <c>calx analyse</c> reads, and what is true of it.</summary>
internal static class SimulatedCsv
{
    private const string OrdinaryWay = "ordinary";

    private static readonly SearchValues<char> PartingRemarks = SearchValues.Create(",;/|\r\n");

    /// <summary>The class: a first line that says what it is, then the practical's own headings.</summary>
    public static string Readings(SimulatedClass drawn)
    {
        Practical practical = drawn.Practical;
        var text = new StringBuilder(string.Create(
            CultureInfo.InvariantCulture, $"Simulated and not measured: {practical.Id} with seed {drawn.Seed}\n"));
        text.Append(CsvLine.Of(["group", .. Arm(drawn, _ => "arm"), .. drawn.Weighings.Select(w => WeighingLabel.Heading(practical, w)), .. Between(practical.Series), "observations"]));
        Dictionary<string, string> seen = practical.Observations.ToDictionary(o => o.Id, InWords);
        foreach (SimulatedGroup group in drawn.Groups)
        {
            text.Append(CsvLine.Of(
            [
                group.Name,
                .. Arm(drawn, _ => group.Arm?.Label ?? OrdinaryWay),
                .. drawn.Weighings.Select(w => Find(group, w)?.Written.ToString() ?? ""),
                .. group.Series?.Points.Skip(1).SkipLast(1).Select(p => p.Value.ToString()) ?? [],
                string.Join("; ", group.Observations.Select(id => seen[id])),
            ]));
        }

        return text.ToString();
    }

    /// <summary>The truth: causes that count, slips, faults drawn, true masses, and the numbers of the bench.</summary>
    public static string Truth(SimulatedClass drawn)
    {
        Practical practical = drawn.Practical;
        var text = new StringBuilder(CsvLine.Of(
        [
            "group", .. Arm(drawn, _ => "arm"), "cause", "second cause", "reading", "size", "unit", "slip", "displayed", "faults",
            .. drawn.Weighings.Select(w => $"true {w.Id} / {practical.Reading(w.Reading).Unit}"),
            .. drawn.Numbers,
        ]));
        foreach (SimulatedGroup group in drawn.Groups)
        {
            SimulatedReading? slip = group.Readings.FirstOrDefault(r => r.IsSlip);
            (string reading, string size, string unit) = Struck(practical, group);
            text.Append(CsvLine.Of(
            [
                group.Name,
                .. Arm(drawn, _ => group.Arm?.Id ?? ""),
                group.Truth.Cause,
                group.Truth.Causes.Count > 1 ? group.Truth.Causes[1] : "",
                reading,
                size,
                unit,
                slip is null ? "" : WeighingLabel.Heading(practical, slip.Weighing),
                slip?.Displayed.ToString() ?? "",
                string.Join("; ", group.Truth.Faults.Faults.Select(f => practical.Faults[f].Cause)),
                .. drawn.Weighings.Select(w => Number(Find(group, w)?.TrueMassInGrams)),
                .. group.Truth.Values.Select(v => Number(v)),
            ]));
        }

        return text.ToString();
    }

    /// <summary>A cell of the column of arms, or none where all groups do it in one way.</summary>
    private static IEnumerable<string> Arm(SimulatedClass drawn, Func<SimulatedClass, string> cell) => drawn.Plan.Arms is null ? [] : [cell(drawn)];

    /// <summary>Headings of the points between the first and the last.</summary>
    private static IEnumerable<string> Between(SeriesDefinition? series) => series is null ? [] : series.TimesInMinutes.Skip(1).SkipLast(1)
        .Select(t => $"{series.Label} at {series.TimeText(t)} {series.TimeUnit} / g");

    /// <summary>The weighing that the cause struck, where it struck one, and how far it moved the result.</summary>
    private static (string Reading, string Size, string Unit) Struck(Practical practical, SimulatedGroup group)
    {
        if (group.Truth.Causes.Count == 0)
        {
            return ("", "", "");
        }

        int fault = practical.Faults.Select((f, i) => (f.Cause, i)).First(f => f.Cause == group.Truth.Cause).i;
        (SimulatedReading? at, double size) = practical.Faults[fault].Effect switch
        {
            FaultEffect.Pen when group.Readings.FirstOrDefault(r => r.IsSlip) is SimulatedReading slip =>
                (slip, (double)(slip.Written.Value - slip.Displayed.Value)),
            FaultEffect.Set => (null, group.Truth.MovedInGrams[fault]),
            _ => (group.Readings.FirstOrDefault(r => r.ShiftInGrams != 0), group.Truth.MovedInGrams[fault]),
        };
        string unit = practical.Faults[fault].Effect is FaultEffect.Pen && at is not null ? practical.Reading(at.Weighing.Reading).Unit : "g";
        return (at is null ? "" : WeighingLabel.Heading(practical, at.Weighing), Number(size), unit);
    }

    /// <summary>A label with a sign that parts remarks is not one remark to whoever reads the file: its id is.</summary>
    private static string InWords(Observation observation) =>
        observation.Label.AsSpan().IndexOfAny(PartingRemarks) < 0 ? observation.Label : observation.Id;

    private static SimulatedReading? Find(SimulatedGroup group, Weighing weighing) =>
        group.Readings.FirstOrDefault(r => r.Weighing == weighing);

    private static string Number(double? value) => value is double number ? Figure.Significant(number, 10) : "";
}
