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
        Practical? practical = root is null ? null : Assemble(new FileMap(root, "a practical", faults), text, faults);
        if (faults.IsEmpty && practical is not null)
        {
            new ProcedureCheck(faults).Run(practical);
        }

        return new PracticalReading(faults.IsEmpty ? practical : null, faults.Faults, faults.Warnings);
    }

    // Sections are read in the order in which they refer to each other, whatever their order in the file.
    private static Practical Assemble(FileMap root, string text, FaultList faults)
    {
        var ids = new IdTables();
        PracticalHeading heading = Heading(root);
        Bench bench = new BenchReader(ids, faults).Read(root);
        var parameters = new ParameterReader(ids, faults);
        IReadOnlyList<Parameter> read = parameters.Parameters(root);
        IReadOnlyList<Arm> arms = parameters.Arms(root);
        Asked asked = Questions(root, ids, faults);
        IReadOnlyList<ProcedureEvent> procedure = new EventReader(ids, faults).Events(root, "procedure");
        var wrong = new FaultReader(ids, faults);
        IReadOnlyList<FaultDefinition> causes = wrong.Faults(root);
        IReadOnlyList<Observation> observations = wrong.Observations(root);
        var advice = new AdviceReader(ids, faults, observations);
        var course = new Course(
            read,
            arms,
            procedure,
            causes,
            observations,
            advice.Actions(root, procedure.Any(e => e is RepeatEvent)),
            advice.Conditions(root),
            advice.Cooling(root));
        LessonPlan lesson = new LessonReader(ids, faults).Read(root, bench.Materials);
        Handouts handouts = new HandoutReader(ids, faults).Read(root);
        root.Close();
        new SafetyCheck(faults).Run(bench, course.Procedure, lesson);
        return new Practical(heading, bench, course, asked, lesson, handouts, text);
    }

    private static PracticalHeading Heading(FileMap root) => new(
        root.Id("practical", new IdTable("practical")),
        root.Whole("version", 1),
        root.Text("title"),
        root.Text("question"));

    private static Asked Questions(FileMap root, IdTables ids, FaultList faults)
    {
        var readings = new ReadingReader(ids, faults);
        var questions = new QuestionReader(ids, faults);
        IReadOnlyList<ReadingDefinition> read = readings.Readings(root);
        IReadOnlyList<ColumnDefinition> columns = readings.Columns(root);
        IReadOnlyList<QuantityDefinition> quantities = questions.Quantities(root);
        FindingsDefinition findings = new FindingsReader(ids, faults).Read(root);
        IReadOnlyList<ConclusionDefinition> conclusions = questions.Conclusions(root);
        IReadOnlyList<AnswerDefinition> answers = questions.Answers(root);
        return new Asked(
            read, columns, quantities, findings, conclusions, answers, new FurtherAnswerReader(ids, faults, questions, answers, findings).Read(root));
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
