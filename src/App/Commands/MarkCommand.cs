using System.CommandLine;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Tables;

namespace Calx.App.Commands;

/// <summary><c>calx mark</c>: a class's calculations marked, each student from the own readings.</summary>
internal static class MarkCommand
{
    public static Verb Create()
    {
        var file = new Argument<string?>("FILE")
        {
            Description = "CSV or XLSX, a row a student: student, readings, answers; headings are ids or labels of the practical",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<string?> practical = PracticalChoice.Create();
        Option<string[]> set = new("--ar-set")
        {
            Description = $"atomic weights that students may use; may be given several times: school (the usual), {string.Join(", ", AtomicWeightChoice.Names)}",
            HelpName = "NAME",
        };
        Option<string?> early = new("--early-rounding") { Description = "a value rounded too far on the way but rightly used: accept (the usual) or one-off", HelpName = "WHAT" };
        var noFigures = new Option<bool>("--no-figures") { Description = "no mark is lost for figures" };
        var units = new Option<bool>("--units") { Description = "students were asked to write units: a missing one counts as wrong" };
        Option<string?> csv = new("--csv") { Description = "also write the marks to this file, a row a student", HelpName = "FILE" };
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "mark",
            "Marks a class's calculations, each student from the own readings: error carried forward, and which idea each wrong value may come from.",
            [
                new("calx mark answers.xlsx --practical magnesium-oxide", "marks, feedback and what the class had in common"),
                new("calx mark answers.csv --practical magnesium-oxide --csv marks.csv", "with a table of the marks"),
            ],
            (result, surroundings) => Run(
                new Asked(
                    result.GetValue(file), result.GetValue(practical), result.GetValue(set) ?? [], result.GetValue(early),
                    result.GetValue(noFigures), result.GetValue(units), result.GetValue(csv), result.GetValue(json)),
                surroundings),
            "Ideas are candidates with probabilities, never a verdict on a student; their rates are judgement. Answers in words are left to the teacher.");
        verb.Arguments.Add(file);
        foreach (Option option in (Option[])[practical, set, early, noFigures, units, csv, json])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(Asked asked, Surroundings surroundings)
    {
        if (asked.File is null)
        {
            surroundings.Error.WriteLine("calx mark: which file? For example: calx mark answers.csv --practical magnesium-oxide");
            return ExitCode.BadInput;
        }

        Practical? practical = PracticalChoice.Find("mark", asked.Practical, surroundings);
        if (practical is null || AtomicWeightChoice.Of(asked.Sets, surroundings) is not { } sets || Policy(asked, surroundings) is not MarkingPolicy policy
            || AnswersFile.Read(asked.File, practical, surroundings) is not MarkingTable.Taken table)
        {
            return ExitCode.BadInput;
        }

        MarkedClass marked = new Marker(practical, policy, sets).Mark(table.Works);
        if (asked.Csv is string path && !TryWrite(path, marked, surroundings))
        {
            return ExitCode.CannotWrite;
        }

        if (asked.AsJson)
        {
            JsonAnswer.Print(surroundings.Output, json => MarkingJson.Write(json, practical, marked, table));
        }
        else
        {
            MarkingText.Write(surroundings.Output, practical, marked);
            AnswersFile.Tell(asked.File, table, surroundings);
        }

        return ExitCode.Done;
    }

    private static MarkingPolicy? Policy(Asked asked, Surroundings surroundings)
    {
        EarlyRounding? early = asked.Early switch { null or "accept" => EarlyRounding.Accept, "one-off" => EarlyRounding.OneMarkOff, _ => null };
        if (early is null)
        {
            surroundings.Error.WriteLine($"calx mark: --early-rounding: '{asked.Early}' is not understood; expected accept or one-off");
            return null;
        }

        return new MarkingPolicy(early.Value, asked.NoFigures ? 0 : 1, 1, asked.Units);
    }

    /// <summary>A table that is there already may have been worked on: it is never replaced.</summary>
    private static bool TryWrite(string path, MarkedClass marked, Surroundings surroundings)
    {
        string full = surroundings.FullPath(path);
        if (Path.Exists(full))
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, "there is such a file already, and it is left as it is; give another name"));
            return false;
        }

        try
        {
            NewFile.Create(full, MarkingCsv.Of(marked), surroundings.Cancellation());
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"the marks cannot be written there ({NewFile.ReasonOf(failure)})"));
            return false;
        }
    }

    private sealed record Asked(string? File, string? Practical, string[] Sets, string? Early, bool NoFigures, bool Units, string? Csv, bool AsJson);
}
