using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Measurement.Uncertainty;

namespace Calx.App.Commands;

/// <summary><c>calx propagate</c>: the uncertainty of a result computed from other values.</summary>
internal static class PropagateCommand
{
    private const double UsualCoverage = 0.95;
    private const int UsualDraws = 1_000_000;

    public static Verb Create()
    {
        var file = new Argument<string?>("FILE") { Description = "a model file (YAML)", Arity = ArgumentArity.ZeroOrOne };
        Option<long?> draws = NumberOption.Whole(
            "--draws", "draws of the Monte Carlo; otherwise 1000000", MonteCarloSettings.LeastDraws, MonteCarloSettings.MostDraws);
        Option<long?> seed = NumberOption.Whole("--seed", "which of the possible draws; otherwise 1", 0, long.MaxValue);
        Option<long?> threads = NumberOption.Whole("--threads", "threads; the answer does not depend on it", 1, 1024);
        Option<double?> coverage = NumberOption.Between("--coverage", "coverage probability; otherwise 0.95", "P", 0, 1);
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "propagate",
            "The uncertainty of a result by the law of propagation, to second order, and by Monte Carlo, which judges the first.",
            [new("calx propagate density.yaml", "the result, its budget and both intervals")],
            (result, surroundings) =>
            {
                double wanted = result.GetValue(coverage) ?? UsualCoverage;
                long many = result.GetValue(draws) ?? UsualDraws;
                if (Math.Min(wanted, 1 - wanted) * many < MonteCarloSettings.LeastOutside)
                {
                    surroundings.Error.WriteLine(
                        $"calx propagate: --coverage leaves fewer than {MonteCarloSettings.LeastOutside} of the draws outside the interval; give more --draws");
                    return ExitCode.BadInput;
                }

                var settings = new MonteCarloSettings(
                    (int)many,
                    (ulong)(result.GetValue(seed) ?? 1),
                    (int)(result.GetValue(threads) ?? 0),
                    wanted,
                    cancellation: surroundings.Cancellation());
                return Run(result.GetValue(file), settings, result.GetValue(json), surroundings);
            },
            "docs/guide/command-line.md shows the file.");
        verb.Arguments.Add(file);
        foreach (Option option in (Option[])[draws, seed, threads, coverage, json])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(string? path, MonteCarloSettings settings, bool asJson, Surroundings surroundings)
    {
        if (path is null)
        {
            surroundings.Error.WriteLine("calx propagate: which file? For example: calx propagate density.yaml");
            return ExitCode.BadInput;
        }

        if (Model(path, surroundings) is not MeasurementModel model)
        {
            return ExitCode.BadInput;
        }

        var answer = new PropagationAnswer(model, settings);
        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => PropagationJson.Write(json, answer));
        }
        else
        {
            PropagationText.Write(surroundings.Output, answer);
        }

        return answer.FirstOrder is null && answer.Drawn is null ? ExitCode.No : ExitCode.Done;
    }

    private static MeasurementModel? Model(string path, Surroundings surroundings)
    {
        FileText text = TextFile.Read(surroundings, path, "a model and its inputs");
        if (text is FileText.Unreadable unreadable)
        {
            surroundings.Error.WriteLine(unreadable.Line);
            return null;
        }

        var faults = new FileFaults(path);
        MeasurementModel? model = ModelFile.Read(((FileText.Read)text).Text, faults);
        foreach (string line in faults.Lines)
        {
            surroundings.Error.WriteLine(line);
        }

        return model;
    }
}
