using System.Globalization;
using System.Text;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Papers.Tables;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Marking;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.App.Checking;

/// <summary>
/// Takes a practical through its uses with a few invented groups: their readings are drawn, written as a table, read back, analysed,
/// and the answers of a student who makes no mistake are marked. What fails is told in words.
/// </summary>
internal sealed class TrialRun
{
    private const int Groups = 4;

    private readonly Practical practical;
    private readonly CancellationToken cancellation;
    private readonly List<TrialStep> steps = [];
    private SimulatedClass? drawn;
    private ClassReadings? readings;

    private TrialRun(Practical practical, CancellationToken cancellation)
    {
        this.practical = practical;
        this.cancellation = cancellation;
    }

    /// <summary>Runs it; a use that rests on one that failed is not tried.</summary>
    public static IReadOnlyList<TrialStep> Of(Practical practical, CancellationToken cancellation)
    {
        var run = new TrialRun(practical, cancellation);
        _ = run.Try("simulate", run.Simulate) && run.Try("read", run.Read) && run.Try("analyse", run.Analyse) && run.Try("mark", run.Mark);
        return run.steps;
    }

    private bool Try(string what, Func<string?> use)
    {
        string? failure;
        try
        {
            failure = use();
        }
        catch (CannotSimulateException reason)
        {
            failure = reason.Message;
        }
        catch (Exception mistake) when (mistake is not (OperationCanceledException or OutOfMemoryException))
        {
            // Whatever a file brings about is told of the file: the person can change that, and nothing else.
            // What the exception says is for programmers, unless it is of a formula.
            string why = mistake is UndefinedResultException ? $" ({mistake.Message.ReplaceLineEndings(" ").TrimEnd('.')})" : "";
            failure = $"the numbers of this file cannot be worked with{why}; {NoValue()}look at the weighings and at the formulas";
        }

        steps.Add(new TrialStep(what, failure));
        return failure is null;
    }

    private string? Simulate()
    {
        drawn = SimulatedClass.Draw(
            new Circumstances(practical), AtomicWeights.Iupac2024, new SimulationPlan(Groups), seed: 1, cancellation: cancellation);
        return null;
    }

    private string? Read()
    {
        using var table = new MemoryStream(Encoding.UTF8.GetBytes(SimulatedCsv.Readings(drawn!)));
        if (TableFile.Read(table) is not TableFile.Opened opened || ClassTableReader.Read(opened.Sheets, practical) is not ClassReading.Taken taken)
        {
            return "a table with the practical's own headings cannot be read back; look at the labels of the readings";
        }

        readings = taken.Readings;
        ColumnMatch? lost = readings.Columns.FirstOrDefault(c => c.Meaning is ColumnMeaning.Ignored);
        return lost is null ? null
            : $"the practical's own heading '{lost.Heading}' is not understood in a table ({((ColumnMeaning.Ignored)lost.Meaning).Reason}); give the reading another label";
    }

    private string? Analyse()
    {
        ClassFindings findings = ClassAnalysis.Of(practical, readings!, AtomicWeights.Iupac2024);
        return findings.Identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == practical.Findings.Key)?.Why;
    }

    /// <summary>Which quantities the invented readings give no value, or a sample of nothing.</summary>
    private string NoValue()
    {
        string[] none =
        [
            .. practical.Quantities.Select(q => (drawn?.Groups ?? []).Select(g => Value(q, g)) switch
            {
                var values when values.Any(v => !double.IsFinite(v)) => $"'{q.Id}' has no value",
                var values when q.Id == practical.Findings.Sample && values.Any(v => v == 0) => $"'{q.Id}', the sample, is 0",
                _ => "",
            }).Where(words => words.Length > 0),
        ];
        return none.Length == 0 ? "" : $"on invented readings {string.Join(", ", none)}: ";
    }

    private static double Value(QuantityDefinition quantity, SimulatedGroup group)
    {
        try
        {
            return quantity.Formula.Evaluate(
                id => group.Readings.LastOrDefault(r => r.Weighing.Reading == id)?.Written.AsDouble ?? double.NaN,
                formula => Formula.Parse(formula).Value.MolarMass(AtomicWeights.Iupac2024).Value);
        }
        catch (UndefinedResultException)
        {
            return double.NaN;
        }
    }

    /// <summary>The right values, each to six figures, earn all marks.</summary>
    private string? Mark()
    {
        var marker = new Marker(practical, new MarkingPolicy(FiguresPenalty: 0), [AtomicWeights.Iupac2024]);
        StudentWork[] blank = [.. drawn!.Groups.Select(g => Work(g, new Dictionary<string, string>(StringComparer.Ordinal)))];
        MarkedClass expected = marker.Mark(blank);
        StudentWork[] right = [.. drawn.Groups.Zip(expected.Works, (group, work) => Work(group, work.Answers
            .Where(a => a.Answer is AnswerDefinition && a.Expected is not null)
            .ToDictionary(a => a.Answer.Id, a => a.Expected!.Value.ToString("G6", CultureInfo.InvariantCulture), StringComparer.Ordinal)))];
        AnswerMark? lost = marker.Mark(right).Works.SelectMany(w => w.Answers)
            .FirstOrDefault(a => a.Answer is AnswerDefinition && a.Given.Length > 0 && a.Marks < a.Answer.Marks);
        return lost is null ? null
            : string.Create(CultureInfo.InvariantCulture, $"the right value of '{lost.Answer.Id}' earns {lost.Marks} of {lost.Answer.Marks} marks; look at its formula and at its marks");
    }

    private static StudentWork Work(SimulatedGroup group, IReadOnlyDictionary<string, string> answers) => new(
        group.Name,
        group.Readings.GroupBy(r => r.Weighing.Reading, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => (IReadOnlyList<WrittenNumber>)[.. g.Select(r => r.Written)], StringComparer.Ordinal),
        answers);
}
