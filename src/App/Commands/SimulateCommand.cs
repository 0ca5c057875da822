using System.CommandLine;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Commands;

/// <summary><c>calx simulate</c>: what a class will probably weigh, and an invented class whose truth is known.</summary>
internal static class SimulateCommand
{
    private const double UsualStep = 0.01;

    /// <summary>In g; no balance steps more finely or more coarsely.</summary>
    private const double FinestStep = 0.000_000_001;

    public static Verb Create()
    {
        var practical = new Argument<string?>("PRACTICAL")
        {
            Description = "an id from 'calx practicals', or the path of a YAML file of your own",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<long?> groups = NumberOption.Whole("--groups", "groups of the class; otherwise 12, or as many as may do the practical side by side", 1, SimulationPlan.MostGroups);
        Option<long?> seed = NumberOption.Whole("--seed", "which of the possible classes; otherwise 1", 0, long.MaxValue);
        Option<string?> cause = new("--cause") { Description = "one cause that counts in every group, and no other", HelpName = "ID" };
        Option<string[]> condition = new("--condition") { Description = "what is said of the class; may be given several times", HelpName = "ID" };
        Option<double?> resolution = NumberOption.Between("--resolution", "smallest step of the balance in g; otherwise 0.01", "G", FinestStep, 1000);
        Option<double?> repeatability = NumberOption.Between(
            "--repeatability", "standard deviation of repeated weighings in g; otherwise 0.7 steps (judgement)", "G", 0, 1000);
        Option<double?> sample = NumberOption.Between("--sample", "usual mass of a sample in g; otherwise the practical's", "G", 0, 1e6);
        Option<long?> rounds = NumberOption.Whole("--rounds", "heatings; otherwise until two weighings agree", 1, 100);
        Option<string?> arms = new("--arms")
        {
            Description = "how groups are divided among the practical's arms, such as covered=4,ordinary=8; otherwise as its file says, or evenly",
            HelpName = "ARM=N,...",
        };
        Option<string?> csv = new("--csv") { Description = "write the invented class to this new file", HelpName = "FILE" };
        Option<string?> truth = new("--truth") { Description = "write what is true of each group to this new file", HelpName = "FILE" };
        var learned = new LearnedOptions();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "simulate",
            "What a class will probably weigh and find; and, with --csv, an invented class to try things out on.",
            [
                new("calx simulate magnesium-oxide", "where readings and results will probably lie"),
                new("calx simulate magnesium-oxide --groups 15 --seed 4 --csv class.csv --truth truth.csv", "an invented class, and what is true of it"),
            ],
            (result, surroundings) => Run(
                result.GetValue(practical),
                new SimulationWords(
                    (int?)result.GetValue(groups),
                    (int)(result.GetValue(rounds) ?? 0),
                    result.GetValue(cause),
                    result.GetValue(condition) ?? [],
                    result.GetValue(sample),
                    result.GetValue(resolution) ?? UsualStep,
                    result.GetValue(repeatability),
                    result.GetValue(arms)),
                new SimulationFiles(result.GetValue(csv), result.GetValue(truth)),
                (ulong)(result.GetValue(seed) ?? 1),
                result.GetValue(json),
                new LearnedNumbers(learned, result, "simulate"),
                surroundings),
            "A file that is there already is left as it is: exit code 2. Exit code 1 where the sample or the groups are more than the practical allows, or a cause cannot count on this balance.");
        verb.Arguments.Add(practical);
        foreach (Option option in (Option[])[groups, seed, cause, condition, resolution, repeatability, sample, rounds, arms, .. learned.All, csv, truth, json])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(
        string? practical, SimulationWords words, SimulationFiles files, ulong seed, bool asJson, LearnedNumbers learned, Surroundings surroundings)
    {
        if (practical is null)
        {
            surroundings.Error.WriteLine("calx simulate: which practical? For example: calx simulate magnesium-oxide");
            return ExitCode.BadInput;
        }

        if (PracticalChoice.Named("simulate", practical, "", learned.Data, surroundings) is not { } chosen)
        {
            return ExitCode.BadInput;
        }

        int code = learned.Find(chosen, surroundings, out AcceptedNumbers? accepted);
        if (code != ExitCode.Done)
        {
            return code;
        }

        if (words.Plan(chosen, accepted, surroundings) is not SimulationChoice choice
            || !files.AreNew(surroundings))
        {
            return ExitCode.BadInput;
        }

        SimulationAnswer answer = Answer(choice, files.Csv is null && files.Truth is null, seed, surroundings);
        if (answer.Drawn is SimulatedClass drawn && !files.TryWrite(drawn, surroundings))
        {
            return ExitCode.CannotWrite;
        }

        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => SimulationJson.Write(json, answer, files));
        }
        else
        {
            SimulationText.Write(surroundings.Output, answer);
        }

        return answer.Reason is null ? ExitCode.Done : ExitCode.No;
    }

    private static SimulationAnswer Answer(SimulationChoice choice, bool onlyPredict, ulong seed, Surroundings surroundings)
    {
        if (choice.TooMuch is string reason)
        {
            return new SimulationAnswer(choice, seed, null, null, reason);
        }

        try
        {
            CancellationToken interrupted = surroundings.Cancellation();
            Prediction prediction = Prediction.Of(
                choice.Circumstances, AtomicWeights.Iupac2024, choice.Plan, seed: seed, cancellation: interrupted);
            SimulatedClass? drawn = onlyPredict
                ? null
                : SimulatedClass.Draw(choice.Circumstances, AtomicWeights.Iupac2024, choice.Plan, seed, cancellation: interrupted);
            return new SimulationAnswer(choice, seed, prediction, drawn, null) { Arms = [.. ArmsOf(choice, seed, interrupted)] };
        }
        catch (CannotSimulateException fault)
        {
            return new SimulationAnswer(choice, seed, null, null, fault.Message);
        }
    }

    /// <summary>What each way is to give, where the groups are divided.</summary>
    private static IEnumerable<ArmOutlook> ArmsOf(SimulationChoice choice, ulong seed, CancellationToken interrupted)
    {
        ArmDivision? arms = choice.Plan.Arms;
        for (int way = 0; way < arms?.Ways.Count; way++)
        {
            yield return new ArmOutlook(arms.Ways[way], arms.Counts[way], Prediction.Of(
                choice.Circumstances.InArm(arms.Ways[way]), AtomicWeights.Iupac2024, choice.Plan.OfOneWay(), seed: seed, cancellation: interrupted));
        }
    }
}
