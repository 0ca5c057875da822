using System.Globalization;
using System.Text.RegularExpressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what stands on paper: the students' sheet and what the technician is told.</summary>
internal sealed partial class HandoutReader(IdTables ids, FaultList faults, IReadOnlyList<ReadingDefinition> readings)
{
    private static readonly Dictionary<string, QuestionTopic> Topics = new(StringComparer.Ordinal)
    {
        ["conclusion"] = QuestionTopic.Conclusion,
        ["evaluation"] = QuestionTopic.Evaluation,
    };

    public Handouts Read(FileMap root) => new(
        Sheet(root),
        Technician(root),
        root.Each("emergencies", "what is done in an emergency", map => new EmergencyAction(map.Text("when"), map.Text("do"), map.Provenance(), map.At), needed: false));

    private SheetDefinition Sheet(FileMap root)
    {
        if (root.Map("sheet", "the students' sheet") is not FileMap map)
        {
            return SheetDefinition.None;
        }

        var sheet = new SheetDefinition(
            map.Each("steps", "a step of the sheet", Step),
            map.Each("account", "what was done", Done, needed: false),
            map.Each("questions", "a question", Question, needed: false),
            map.Texts("words"));
        map.Close();
        return sheet;
    }

    private SheetStep Done(FileMap map)
    {
        string say = map.Text("say");
        foreach (Match unknown in Placeholder().Matches(say).Where(m => m.Value != SheetStep.Sample))
        {
            faults.Add(map.At, $"'{unknown.Value}' is put in nowhere; expected {SheetStep.Sample} for the mass of the sample");
        }

        return new SheetStep(say, map.References("at", ids.Steps), map.At);
    }

    private SheetStep Step(FileMap map)
    {
        string say = map.Text("say");
        foreach (Match unknown in Placeholder().Matches(say).Where(m => m.Value is not (SheetStep.Sample or SheetStep.Cooling) && !ids.Readings.Has(m.Value.Trim('{', '}'))))
        {
            faults.Add(map.At, $"'{unknown.Value}' is put in nowhere; expected {SheetStep.Sample} for the mass of the sample or {SheetStep.Cooling} for the minutes of cooling, or the id of a reading for what the plan expects it to show");
        }

        return new SheetStep(say, map.References("at", ids.Steps), map.At);
    }

    private SheetQuestion Question(FileMap map)
    {
        string[] expected = [.. map.Texts("expected")];
        if (expected.Length == 0)
        {
            faults.Add(map.At, "a question lacks the key 'expected': a list of what an answer says, a mark each");
        }

        (string Reading, int Round)[] needs = [.. map.Nodes("needs", "the id of a reading").Select(item => Needed(map, item)).OfType<(string, int)>()];
        return new SheetQuestion(
            map.Id("id", ids.Questions),
            map.Text("ask"),
            map.Word("about", Topics),
            expected,
            [.. needs.Select(n => n.Reading).Distinct()],
            needs.Select(n => n.Round).Append(1).Max(),
            map.Find("lines") is null ? 1 + expected.Length : map.Whole("lines", 1),
            map.At);
    }

    /// <summary>A reading, or one of its repeated weighings such as <c>after2</c>.</summary>
    private (string Reading, int Round)? Needed(FileMap map, FileNode item)
    {
        if (item is ScalarNode written && Repeat().Match(written.Text) is { Success: true } repeat
            && readings.FirstOrDefault(r => r.Id == repeat.Groups[1].Value) is ReadingDefinition reading)
        {
            int round = int.Parse(repeat.Groups[2].Value, NumberStyles.None, CultureInfo.InvariantCulture);
            if (round <= reading.Repeats)
            {
                return (reading.Id, round);
            }

            faults.Add(written.At, string.Create(
                CultureInfo.InvariantCulture, $"'{reading.Id}' is weighed {(reading.Repeats == 1 ? "once" : $"{reading.Repeats} times at most")}, so there is no '{written.Text}'; expected {reading.Id}{(reading.Repeats == 1 ? "" : $", or {reading.Id}2 up to {reading.Id}{reading.Repeats}")}"));
            return null;
        }

        return map.ReferenceOf(item, ids.Readings) is string id ? (id, 1) : null;
    }

    [GeneratedRegex(@"^([a-zA-Z]+)([2-9])\z")]
    private static partial Regex Repeat();

    private TechnicianDefinition Technician(FileMap root)
    {
        if (root.Map("technician", "what the technician is told") is not FileMap map)
        {
            return TechnicianDefinition.None;
        }

        var technician = new TechnicianDefinition(
            map.OptionalNumber("noticeInHours", NumberRange.FromZero) ?? 0,
            map.Each("prepare", "something to prepare", Preparation, needed: false),
            map.Texts("waste"),
            map.Texts("returns"));
        map.Close();
        return technician;
    }

    private PreparationStep Preparation(FileMap map) => new(
        map.Text("say"),
        map.OptionalNumber("minutes", NumberRange.FromZero) ?? 0,
        map.OptionalNumber("minutesPerGroup", NumberRange.FromZero) ?? 0,
        map.OptionalReference("saves", ids.Steps),
        map.Provenance(),
        map.At);

    [GeneratedRegex(@"\{[^}]*\}?")]
    private static partial Regex Placeholder();
}
