using System.CommandLine;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Pages;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.App.Commands;

/// <summary><c>calx papers</c>: what a lesson needs on paper, ready to print and to edit.</summary>
internal static class PapersCommand
{
    public static Verb Create()
    {
        var practical = new Argument<string?>("PRACTICAL")
        {
            Description = "an id from 'calx practicals', or the path of a YAML file of your own",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var plan = new PlanCommandOptions();
        var papers = new PapersOptions();
        var records = new RecordsChoice();
        records.Data.Description = "folder of the records in which it is looked up whether the practical was signed for this plan";
        var verb = new Verb(
            "papers",
            "What a lesson needs on paper: student sheets at three levels, key, requisition, risk notes, the lesson on one side; a workbook for the results; and after it a report and a sheet for the wall.",
            [
                new("calx papers magnesium-oxide --out papers", "everything: papers as DOCX and HTML, the results table as XLSX"),
                new("calx papers magnesium-oxide --set student --level guided --format docx --class 9F --out papers", "one sheet for a word processor"),
                new("calx papers copper-sulfate-hydrate --groups 10 --mass 2.0 --technician-prepares --set requisition --out papers", "from a plan of your own"),
                new("calx papers magnesium-oxide --set cover --seed 7 --out papers", "a lesson without practical work, for whoever takes it"),
                new("calx papers magnesium-oxide --groups 12 --set results --format xlsx --out papers", "a table for the class's results, which 'calx analyse' reads back"),
                new("calx papers magnesium-oxide --set report --set display --results class.xlsx --class 9F --out papers", "after the lesson: a report, and a sheet for the wall"),
                new("calx papers magnesium-oxide --set student --format svg --format png --out pictures", "the drawings of the apparatus as files"),
            ],
            (result, surroundings) => Run(
                result.GetValue(practical), result.GetValue(records.Data), plan.Words(result), papers.Words(result), records.IsSaid(result) ? new RecordsLookUp(records.Options(result, "papers", surroundings)) : null, surroundings),
            "The options of 'calx plan' say which lesson. A file that is there already is left as it is: exit code 2. Exit code 1 where something that is asked for "
            + "needs a reading that the table has no row for, or the sample is more than a class may use. Papers to work from say DRAFT until the practical was signed for this plan on its page in 'calx serve', and --data says in which records that stands; "
            + "those of a cover lesson never do, since nothing is handled in it.");
        verb.Arguments.Add(practical);
        foreach (Option option in papers.All.Concat(records.All).Concat(plan.OfLesson))
        {
            verb.Options.Add(option);
        }

        verb.Subcommands.Add(SheetCheckCommand.Create());
        verb.Subcommands.Add(WeekCommand.Create());
        return verb;
    }

    private static int Run(string? practical, string? data, PlanWords plan, PapersWords words, RecordsLookUp? records, Surroundings surroundings)
    {
        if (practical is null || words.Out is null)
        {
            surroundings.Error.WriteLine($"calx papers: {(practical is null ? "which practical" : "into which folder")}? For example: calx papers magnesium-oxide --out papers");
            return ExitCode.BadInput;
        }

        return PracticalChoice.Named("papers", practical, "", data, surroundings) is Practical chosen
            && plan.Plan(chosen, surroundings) is PlanChoice choice
            && words.Order(surroundings) is PapersOrder order
            ? Make(choice, plan, order, records, surroundings)
            : ExitCode.BadInput;
    }

    private static int Make(PlanChoice choice, PlanWords words, PapersOrder order, RecordsLookUp? records, Surroundings surroundings)
    {
        if (choice.TooMuch is string reason)
        {
            surroundings.Error.WriteLine($"calx papers: {reason}");
            return ExitCode.No;
        }

        ClassOutcome? outcome = null;
        if (order.Results is string results && (outcome = OutcomeChoice.Of(results, choice.Settings, words, order.ShowsAccepted, surroundings)) is null)
        {
            return ExitCode.BadInput;
        }

        bool isSigned = false;
        if (records is not null && records.IsSigned(choice.Settings, surroundings, out isSigned) is not ExitCode.Done and var trouble)
        {
            return trouble;
        }

        Plan plan = Plan.Of(choice.Settings, AtomicWeights.Iupac2024, new PlanOptions(1, choice.Wanted, looksForWays: false, cancellation: surroundings.Cancellation()));
        var setting = new PaperSetting(plan, order.Occasion with { Printed = Dates.Day(Dates.Today(surroundings.Clock)) }, order.Look, isSigned, order.Seed);
        int code = PaperFiles.Write(PaperSet.Of(setting, order.Set, order.Levels, choice.Stock, outcome), order, surroundings);
        IReadOnlyList<string> warnings = SheetWarnings.Of(choice.Settings);
        foreach (string warning in warnings)
        {
            surroundings.Error.WriteLine($"calx papers: {warning}");
        }

        return code == ExitCode.Done && warnings.Count > 0 ? ExitCode.No : code;
    }
}
