using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Papers.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.App.Commands;

/// <summary><c>calx analyse</c>: from a class's file of weighings to its result.</summary>
internal static class AnalyseCommand
{
    /// <summary>In g; a balance steps more coarsely than this: even a microbalance by 0.0000001 g.</summary>
    private const double FinestStep = 0.000_000_01;

    public static Verb Create()
    {
        var file = new Argument<string?>("FILE")
        {
            Description = "the class's weighings: CSV or XLSX, a row a group, headings in your own words",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<string?> practical = PracticalChoice.Create();
        Option<string?> html = new("--html") { Description = "also write a report with charts to this file", HelpName = "FILE" };
        Option<double?> resolution = NumberOption.Between(
            "--resolution", "smallest step of the balance in g; otherwise from the most decimals", "G", FinestStep, 1000);
        Option<double?> repeatability = NumberOption.Between(
            "--repeatability", "standard deviation of repeated weighings in g; otherwise 0.7 steps (judgement)", "G", 0, 1000);
        var noCauses = new Option<bool>("--no-causes") { Description = "only what the masses show: no causes, decisions or next steps" };
        Option<string[]> condition = new("--condition") { Description = "what is said of the class; may be given several times", HelpName = "ID" };
        Option<string?> data = PracticalChoice.CreateData();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "analyse",
            "What a class's weighings show: each group's result with its uncertainty, the class's result, and what cannot be said.",
            [
                new("calx analyse class.xlsx --practical magnesium-oxide", "the result in words and tables"),
                new("calx analyse class.csv --practical magnesium-oxide --html report.html", "with a report to print"),
            ],
            (result, surroundings) => Run(
                new Asked(
                    result.GetValue(file),
                    result.GetValue(practical),
                    result.GetValue(data),
                    result.GetValue(html),
                    new BalanceOptions((decimal?)result.GetValue(resolution), result.GetValue(repeatability)),
                    new AnalysisOptions(!result.GetValue(noCauses), result.GetValue(condition) ?? []),
                    result.GetValue(json)),
                surroundings),
            "Exit code 1 where none of the practical's quantities can be found from the file's readings.");
        verb.Arguments.Add(file);
        foreach (Option option in (Option[])[practical, html, resolution, repeatability, condition, noCauses, data, json])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(Asked asked, Surroundings surroundings)
    {
        if (asked.File is null)
        {
            surroundings.Error.WriteLine("calx analyse: which file? For example: calx analyse class.csv --practical magnesium-oxide");
            return ExitCode.BadInput;
        }

        if (asked.Html is string report && surroundings.FullPath(report) == surroundings.FullPath(asked.File))
        {
            surroundings.Error.WriteLine("calx analyse: --html: the report would take the place of the class's file; give it another name");
            return ExitCode.BadInput;
        }

        Practical? practical = PracticalChoice.Find("analyse", asked.Practical, asked.Data, surroundings);
        if (practical is not null && !Known(practical, asked.Options, surroundings))
        {
            return ExitCode.BadInput;
        }

        ClassReadings? readings = practical is null ? null : ClassFile.Read(asked.File, practical, asked.Balance, surroundings);
        if (practical is null || readings is null)
        {
            return ExitCode.BadInput;
        }

        ClassFindings findings = ClassAnalysis.Of(practical, readings, AtomicWeights.Iupac2024, asked.Options);
        if (asked.Html is string path && !ReportFile.TryWrite(findings, asked.File, path, surroundings))
        {
            return ExitCode.CannotWrite;
        }

        if (asked.AsJson)
        {
            JsonAnswer.Print(surroundings.Output, json => FindingsJson.Write(json, findings));
        }
        else
        {
            FindingsText.Write(surroundings.Output, findings);
        }

        return findings.Identifiability.Determined.Count == 0 ? ExitCode.No : ExitCode.Done;
    }

    private static bool Known(Practical practical, AnalysisOptions options, Surroundings surroundings)
    {
        string[] faults = [.. ConditionChoice.Faults(practical, options.Conditions)];
        foreach (string fault in faults)
        {
            surroundings.Error.WriteLine($"calx analyse: {fault}");
        }

        return faults.Length == 0;
    }

    private sealed record Asked(
        string? File, string? Practical, string? Data, string? Html, BalanceOptions Balance, AnalysisOptions Options, bool AsJson);
}
