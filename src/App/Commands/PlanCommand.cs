using System.CommandLine;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.App.Commands;

/// <summary><c>calx plan</c>: amounts that can work, and a lesson that ends before the bell.</summary>
internal static class PlanCommand
{
    /// <summary>Where nothing is said.</summary>
    internal const double UsualMinutes = 60;

    public static Verb Create()
    {
        var practical = new Argument<string?>("PRACTICAL")
        {
            Description = "an id from 'calx practicals', or the path of a YAML file of your own",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var options = new PlanCommandOptions();
        var verb = new Verb(
            "plan",
            "Whether a lesson can work: amounts the balances can resolve, readings to expect, the time it takes, ways out, and kit.",
            [
                new("calx plan magnesium-oxide --groups 12 --balances 2 --minutes 60", "does it fit, and if not, what does"),
                new("calx plan magnesium-oxide --mass 0.10 --heatings 1 --technician-prepares --minutes 75", "with less metal, one heating, prepared by a technician"),
                new("calx plan magnesium-oxide --learned", "with the times and rates that you accepted from past lessons"),
                new("calx plan copper-sulfate-hydrate --groups 1 --minutes 100 --html plan.html", "a demonstration, with charts to print"),
            ],
            (result, surroundings) => Run(result.GetValue(practical), options.Words(result), options.How(result), new LearnedNumbers(options.Learned, result, "plan"), surroundings),
            "Exit code 1 where the lesson does not fit, the table cannot lead to what is to be concluded, or the sample or the groups are more than the practical allows. "
            + "A plan helps to think; it replaces neither a trial run nor the employer's risk assessment.");
        verb.Arguments.Add(practical);
        foreach (Option option in options.All)
        {
            verb.Options.Add(option);
        }

        return verb;

        static int Run(string? practical, PlanWords words, PlanHow how, LearnedNumbers learned, Surroundings surroundings)
        {
            if (practical is null)
            {
                surroundings.Error.WriteLine("calx plan: which practical? For example: calx plan magnesium-oxide");
                return ExitCode.BadInput;
            }

            if (PracticalChoice.Named("plan", practical, "", learned.Data, surroundings) is not Practical chosen)
            {
                return ExitCode.BadInput;
            }

            int code = learned.Find(chosen, surroundings, out AcceptedNumbers? accepted);
            return code != ExitCode.Done ? code
                : (words with { Learned = accepted }).Plan(chosen, surroundings) is PlanChoice choice
                ? Answer(choice, how, surroundings)
                : ExitCode.BadInput;
        }
    }

    private static int Answer(PlanChoice choice, PlanHow how, Surroundings surroundings)
    {
        var options = new PlanOptions(
            how.Seed, choice.Wanted, how.LooksForWays, progress: stage => surroundings.Progress(StageOf(stage)), cancellation: surroundings.Cancellation());
        Plan? plan = choice.TooMuch is null ? Plan.Of(choice.Settings, AtomicWeights.Iupac2024, options) : null;
        surroundings.Progress("");
        var answer = new PlanAnswer(choice, how.Seed, plan, choice.TooMuch);
        if (how.Html is string path && plan is not null && !PlanFile.TryWrite(plan, choice.Stock, path, surroundings))
        {
            return ExitCode.CannotWrite;
        }

        if (how.AsJson)
        {
            JsonAnswer.Print(surroundings.Output, json => PlanJson.Write(json, answer));
        }
        else
        {
            PlanText.Write(surroundings.Output, answer);
        }

        return plan is { Fits: true, CanConclude: true } ? ExitCode.Done : ExitCode.No;
    }

    private static string StageOf(string stage) => stage switch
    {
        "amounts" => "trying amounts ...",
        "readings" => "drawing readings ...",
        "lesson" => "running lessons ...",
        _ => "looking for ways out ...",
    };
}
