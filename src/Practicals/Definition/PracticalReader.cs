using System.Text;
using Calx.Practicals.Definition.Source;

namespace Calx.Practicals.Definition;

/// <summary>
/// Reads a practical's file. Whatever the text is, nothing is thrown: every fault is named with its line and column.
/// First each section is read by itself; where all of them are sound, the checks across sections follow.
/// </summary>
public static class PracticalReader
{
    /// <summary>Reads a practical from the bytes of its file.</summary>
    /// <param name="bytes">UTF-8 with or without its byte order mark; anything else is a fault.</param>
    /// <param name="fileName">The file's name, for the faults.</param>
    public static PracticalReading Read(ReadOnlySpan<byte> bytes, string fileName)
    {
        ArgumentException.ThrowIfNullOrEmpty(fileName);
        int valid = FirstBadByte(bytes);
        if (valid == bytes.Length)
        {
            return Read(Encoding.UTF8.GetString(bytes), fileName);
        }

        ReadOnlySpan<byte> before = bytes[..valid];
        ReadOnlySpan<byte> line = before[(before.LastIndexOf((byte)'\n') + 1)..];
        var at = new FilePosition(before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(line) + 1);
        var faults = new FaultList(fileName);
        faults.Add(at, "this is not UTF-8 text; save the file as UTF-8");
        return new PracticalReading(null, faults.Faults, []);
    }

    /// <summary>Reads a practical from the text of its file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">The file's name, for the faults.</param>
    public static PracticalReading Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(fileName);
        var faults = new FaultList(fileName);
        FileNode? root = FileTree.Read(text.TrimStart('\uFEFF'), faults);
        if (root is null)
        {
            return new PracticalReading(null, faults.Faults, faults.Warnings);
        }

        var sections = new SoundSections(faults);
        Practical practical = Assemble(new FileMap(root, "a practical", faults), text, sections, faults);
        new ProcedureCheck(faults).Run(practical, sections);
        if (faults.IsEmpty)
        {
            new InstrumentCheck(faults).Run(practical);
        }

        return new PracticalReading(
            faults.IsEmpty ? practical : null, faults.Faults, faults.Warnings, new PracticalDraft(practical, sections, root));
    }

    // Sections are read in the order in which they refer to each other, whatever their order in the file.
    private static Practical Assemble(FileMap root, string text, SoundSections sections, FaultList faults)
    {
        var ids = new IdTables();
        PracticalHeading heading = Heading(root, faults);
        Bench bench = sections.Read(FileSection.Bench, () => new BenchReader(ids, faults).Read(root));
        var parameters = new ParameterReader(ids, faults);
        IReadOnlyList<Parameter> read = sections.Read(FileSection.Parameters, () => parameters.Parameters(root));
        IReadOnlyList<Arm> arms = sections.Read(FileSection.Parameters, () => parameters.Arms(root));
        Asked asked = Questions(root, ids, sections, faults);
        IReadOnlyList<ProcedureEvent> procedure = sections.Read(FileSection.Procedure, () => new EventReader(ids, faults).Events(root, "procedure"));
        var wrong = new FaultReader(ids, faults);
        IReadOnlyList<FaultDefinition> causes = sections.Read(FileSection.Faults, () => wrong.Faults(root));
        IReadOnlyList<Observation> observations = sections.Read(FileSection.Faults, () => wrong.Observations(root));
        var advice = new AdviceReader(ids, faults, observations);
        var course = new Course(
            asked.Series is SeriesDefinition series ? [.. read, Elapsed(series)] : read,
            arms,
            procedure,
            causes,
            observations,
            advice.Actions(root, procedure.Any(e => e is RepeatEvent)),
            advice.Conditions(root),
            advice.Cooling(root));
        LessonPlan lesson = sections.Read(FileSection.Lesson, () => new LessonReader(ids, faults).Read(root, bench.Materials));
        Handouts handouts = new HandoutReader(ids, faults, asked.Readings).Read(root);
        root.Close();
        new SafetyCheck(faults).Run(bench, course.Procedure, lesson);
        return new Practical(heading, bench, course, asked, lesson, handouts, text);
    }

    /// <summary>The minutes of a series as a number of the procedure: its length, and for ever where everything is ideal.</summary>
    private static Parameter Elapsed(SeriesDefinition series) => new(
        series.Elapsed,
        "minutes since the first point",
        "min",
        SeriesDefinition.Forever,
        new ParameterLaw.Fixed(series.UntilInMinutes),
        shared: false,
        new Provenance(Standing.Computed, null),
        series.At);

    /// <summary>No other part of the file rests on its family.</summary>
    private static PracticalFamily Family(FileMap root, FaultList faults)
    {
        int before = faults.Spoiling;
        PracticalFamily family = root.Word("family", PracticalFamilies.Words);
        faults.Forgive(before);
        return family;
    }

    private static PracticalHeading Heading(FileMap root, FaultList faults) => new(
        root.Id("practical", new IdTable("practical")),
        root.Whole("version", 1),
        root.Text("title"),
        root.Text("question"),
        root.Find("family") is null ? null : Family(root, faults));

    private static Asked Questions(FileMap root, IdTables ids, SoundSections sections, FaultList faults)
    {
        var readings = new ReadingReader(ids, faults);
        var questions = new QuestionReader(ids, faults);
        IReadOnlyList<ReadingDefinition> read = sections.Read(FileSection.Readings, () => readings.Readings(root));
        IReadOnlyList<ColumnDefinition> columns = sections.Read(FileSection.Readings, () => readings.Columns(root));
        IReadOnlyList<QuantityDefinition> quantities = sections.Read(FileSection.Quantities, () => questions.Quantities(root));
        SeriesDefinition? series = sections.Read(FileSection.Quantities, () => new SeriesReader(ids, faults).Read(root));
        FindingsDefinition findings = sections.Read(FileSection.Findings, () => new FindingsReader(ids, faults).Read(root));
        IReadOnlyList<ConclusionDefinition> conclusions = sections.Read(FileSection.Conclusions, () => questions.Conclusions(root));
        IReadOnlyList<AnswerDefinition> answers = questions.Answers(root);
        return new Asked(
            read, columns, quantities, findings, conclusions, answers, new FurtherAnswerReader(ids, faults, questions, answers, findings).Read(root), series);
    }

    private static int FirstBadByte(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (at < bytes.Length
            && Rune.DecodeFromUtf8(bytes[at..], out _, out int length) == System.Buffers.OperationStatus.Done)
        {
            at += length;
        }

        return at;
    }
}
