using System.Globalization;
using Calx.App.Live;
using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Inference;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Tables;

namespace Calx.App.Input;

/// <summary>Readings that stand elsewhere than in the class's file: in the records of a lesson, or in what is true of catch-up packs.</summary>
/// <param name="byName">The source of each student's, by name as <see cref="CatchUpStudent.Normal"/> has it.</param>
/// <param name="otherwise">What is said of a student who is not among them, as the end of a sentence.</param>
internal sealed class OwnReadings(IReadOnlyDictionary<string, OwnReadings.Source> byName, string otherwise)
{
    /// <summary>A student's readings, group and curve; which of the readings of a pack were used is told by the answers.</summary>
    public delegate (IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> Readings, string? Group, IReadOnlyDictionary<string, CurveReadOff> ReadOff) Source(
        IReadOnlyDictionary<string, string> answers);

    /// <summary>Those of a lesson: by name, or by number in the class.</summary>
    public static OwnReadings Of(LessonWorks lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        var byName = new Dictionary<string, Source>(StringComparer.Ordinal);
        foreach (LessonWork each in lesson.Each)
        {
            byName[each.Member.Number.ToString(CultureInfo.InvariantCulture)] = answers => (each.ReadingsFor(answers), each.Work.Group, each.Work.ReadOff);
        }

        foreach (LessonWork each in lesson.Each)
        {
            byName[CatchUpStudent.Normal(each.Work.Student)] = answers => (each.ReadingsFor(answers), each.Work.Group, each.Work.ReadOff);
        }

        return new OwnReadings(byName, "was not in that lesson");
    }

    /// <summary>A table with these readings in it. A student who is not known here keeps what the file has, and a note says so.</summary>
    public MarkingTable.Taken Into(MarkingTable.Taken table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var notes = new List<string>();
        StudentWork[] works = [.. table.Works.Select(w => With(w, notes))];
        return table with { Works = works, Told = [.. table.Told, .. notes], NoReadings = null };
    }

    private StudentWork With(StudentWork work, List<string> notes)
    {
        if (!byName.TryGetValue(CatchUpStudent.Normal(work.Student), out Source? source))
        {
            notes.Add($"{work.Student} {otherwise}; {(work.Readings.Count > 0 ? "marked by the readings in the file" : "without readings there is little to mark by")}");
            return work;
        }

        (IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> readings, string? group, IReadOnlyDictionary<string, CurveReadOff> readOff) = source(work.Answers);
        string[] differing = [.. work.Readings.Where(r => readings.TryGetValue(r.Key, out IReadOnlyList<WrittenNumber>? kept) && !r.Value.Select(v => v.Value).SequenceEqual(kept.Select(v => v.Value))).Select(r => r.Key)];
        if (differing.Length > 0)
        {
            notes.Add($"{work.Student}: {string.Join(", ", differing.Select(d => $"'{d}'"))} in the file is not what was kept; marked by what was kept");
        }

        return new StudentWork(work.Student, readings, work.Answers, work.Row, work.Group ?? group, work.SourcedId) { ReadOff = readOff.Count > 0 ? readOff : work.ReadOff };
    }
}
