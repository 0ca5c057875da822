using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Practicals.Marking;

namespace Calx.App.Commands;

/// <summary>The options of <c>calx mark</c>: whose answers, and how strictly.</summary>
internal sealed class MarkOptions
{
    private readonly Argument<string?> file = new("FILE")
    {
        Description = "CSV or XLSX, a row a student: student, group, readings, answers; headings are ids or labels of the practical",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> practical = PracticalChoice.Create();
    private readonly Option<string?> lesson = new("--lesson") { Description = "a lesson of the records, by the id in its page's address: readings from each student's group, and without FILE the answers too", HelpName = "ID" };
    private readonly Option<string?> truth = new("--truth") { Description = "what is true of catch-up packs: readings from each student's own pack", HelpName = "FILE" };
    private readonly Option<string?> overrulings = new("--overrulings") { Description = "your own marks: a table student, answer, marks, reason; also the marks of answers in words", HelpName = "FILE" };
    private readonly Option<string[]> set = new("--ar-set")
    {
        Description = $"atomic weights that students may use; may be given several times: school (the usual), {string.Join(", ", AtomicWeightChoice.Names)}",
        HelpName = "NAME",
    };

    private readonly Option<string?> early = new("--early-rounding") { Description = "a value rounded too far on the way but rightly used: accept (the usual) or one-off", HelpName = "WHAT" };
    private readonly Option<bool> noFigures = new("--no-figures") { Description = "no mark is lost for figures" };
    private readonly Option<bool> units = new("--units") { Description = "students were asked to write units: a missing one counts as wrong" };
    private readonly Option<string?> csv = new("--csv") { Description = "also write the marks to this file, a row a student", HelpName = "FILE" };
    private readonly MarkOutputOptions outputs = new();
    private readonly Option<bool> json = JsonOption.Create();

    /// <summary>The file.</summary>
    public Argument<string?> File => file;

    /// <summary>Whose records.</summary>
    public RecordsChoice Records { get; } = new();

    /// <summary>All options, in the order of the help page.</summary>
    public IReadOnlyList<Option> All => [practical, lesson, truth, overrulings, set, early, noFigures, units, csv, .. outputs.All, json, .. Records.All];

    /// <summary>What was said.</summary>
    public MarkWords Words(ParseResult result) => new(
        result.GetValue(file),
        result.GetValue(practical),
        result.GetValue(lesson),
        result.GetValue(truth),
        result.GetValue(overrulings),
        result.GetValue(set) ?? [],
        result.GetValue(early),
        result.GetValue(noFigures),
        result.GetValue(units),
        result.GetValue(csv),
        outputs.Words(result),
        result.GetValue(json),
        result.GetValue(Records.Data));
}

/// <summary>What was said to <c>calx mark</c>, as typed.</summary>
internal sealed record MarkWords(
    string? File, string? Practical, string? Lesson, string? Truth, string? Overrulings, string[] Sets, string? Early, bool NoFigures, bool Units, string? Csv, MarkOutputWords Outputs, bool AsJson, string? Data)
{
    /// <summary>Whether anything was said of how strictly to mark.</summary>
    public bool SaysHow => Early is not null || NoFigures || Units;

    /// <summary>How strictly, or null after telling what is not understood.</summary>
    public MarkingPolicy? Policy(Surroundings surroundings)
    {
        EarlyRounding? early = Early switch { null or "accept" => EarlyRounding.Accept, "one-off" => EarlyRounding.OneMarkOff, _ => null };
        if (early is null)
        {
            surroundings.Error.WriteLine($"calx mark: --early-rounding: '{Early}' is not understood; expected accept or one-off");
            return null;
        }

        return new MarkingPolicy(early.Value, NoFigures ? 0 : 1, 1, Units);
    }
}
