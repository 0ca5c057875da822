using System.CommandLine;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Pages;
using Calx.Chemistry.Elements;
using Calx.Papers.Handouts;
using Calx.Papers.Handouts.CatchUp;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Commands;

/// <summary><c>calx catch-up</c>: simulated data of their own for those who were away, on paper, with a key and the truth.</summary>
internal static class CatchUpCommand
{
    public static Verb Create()
    {
        var practical = new Argument<string?>("PRACTICAL")
        {
            Description = "an id from 'calx practicals', or the path of a YAML file of your own",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var plan = new PlanCommandOptions();
        var options = new CatchUpOptions();
        Option<string?> data = PracticalChoice.CreateData();
        var verb = new Verb(
            "catch-up",
            "Packs for those who were away: simulated readings of each student's own, a decision to take after each heating, and one key for you.",
            [
                new("calx catch-up magnesium-oxide --students away.txt --seed 2026 --out catch-up", "a sheet a student, the key and the truth, as DOCX and HTML"),
                new("calx catch-up copper-sulfate-hydrate --students 9F.csv --seed 7 --class 9F --level guided --odd 0.2 --format html --out catch-up", "with more help, and fewer odd cases"),
            ],
            (result, surroundings) => Run(result.GetValue(practical), result.GetValue(data), plan.Words(result), options.Words(result), surroundings),
            "The same seed and name give the same pack, whoever else is on the list. The options of 'calx plan' say which lesson; its first balance shows the readings. "
            + $"What is true of each pack is written to {CatchUpWords.TruthName} in the folder unless --truth names another file: it and the key are for you alone. "
            + "A file that is there already is left as it is: exit code 2. Exit code 1 where something that is asked for needs a reading that the plan leaves out, or no such data can be drawn. "
            + "Every paper says SIMULATED DATA, and DRAFT until the practical was signed on its page in 'calx serve'.");
        verb.Arguments.Add(practical);
        foreach (Option option in options.All.Concat(plan.OfLesson.Where(o => options.All.All(own => own.Name != o.Name))).Append(data))
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(string? practical, string? data, PlanWords plan, CatchUpWords words, Surroundings surroundings) =>
        words.AreUnderstood(practical, surroundings)
        && PracticalChoice.Named("catch-up", practical!, "", data, surroundings) is Practical chosen
        && plan.Plan(chosen, surroundings) is PlanChoice choice
        && StudentsFile.Read(words.Students!, surroundings) is IReadOnlyList<CatchUpStudent> students
            ? Make(choice, students, words, surroundings)
            : ExitCode.BadInput;

    private static int Make(PlanChoice choice, IReadOnlyList<CatchUpStudent> students, CatchUpWords words, Surroundings surroundings)
    {
        if (choice.TooMuch is string reason)
        {
            surroundings.Error.WriteLine($"calx catch-up: {reason}");
            return ExitCode.No;
        }

        try
        {
            IReadOnlyList<CatchUpPack> packs = CatchUpPacks.Of(
                choice.Settings, AtomicWeights.Iupac2024, students, new(words.Seed!.Value, words.OddShare, cancellation: surroundings.Cancellation()));
            return Write(new CatchUpAnswer(choice.Settings, words.Seed, words.OddShare, words.Support, words.Occasion, packs), words, surroundings);
        }
        catch (CannotSimulateException fault)
        {
            surroundings.Error.WriteLine($"calx catch-up: {fault.Message}");
            return ExitCode.No;
        }
    }

    private static int Write(CatchUpAnswer answer, CatchUpWords words, Surroundings surroundings)
    {
        var setting = new CatchUpSetting(answer.Plan, words.Occasion with { Printed = Dates.Day(Dates.Today(surroundings.Clock)) }, words.Support, words.Look, isChecked: false);
        int code = CatchUpFiles.Write(answer, words, CatchUpPapers.Of(setting, answer.Packs), surroundings);
        if (code != ExitCode.Done)
        {
            return code;
        }

        if (words.AsJson)
        {
            JsonAnswer.Print(surroundings.Output, json => CatchUpJson.Write(json, answer));
        }

        IReadOnlyList<string> warnings = SheetWarnings.Of(answer.Plan);
        foreach (string warning in warnings)
        {
            surroundings.Error.WriteLine($"calx catch-up: {warning}");
        }

        return warnings.Count > 0 ? ExitCode.No : ExitCode.Done;
    }
}
