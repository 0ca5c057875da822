using System.CommandLine;
using System.Reflection;
using Calx.App.Demo;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Papers.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.App.Commands;

/// <summary><c>calx demo</c>: the main job on an invented class.</summary>
internal static class DemoCommand
{
    private const string PracticalId = "magnesium-oxide";
    private const string ClassName = "Larkmoor School, class 9F";

    public static Verb Create()
    {
        var folder = new Option<string?>("--out") { Description = "folder for the report; otherwise the current one", HelpName = "DIR" };
        var noBrowser = new Option<bool>("--no-browser") { Description = "print and write only; also without a terminal" };
        Option<long?> port = NumberOption.Whole("--port", "port of the pages; otherwise 8370 or the next that is free", 0, 65_535);
        var verb = new Verb(
            "demo",
            "The whole job on an invented class: twelve groups burn magnesium, four of them with an odd result; then another class, live, half-way through its lesson.",
            [new("calx demo", "the result on the terminal, a report with charts beside it, and the pages of a lesson that is going on")],
            (result, surroundings) =>
            {
                int code = Run(result.GetValue(folder), surroundings);
                return code == ExitCode.Done && surroundings.HasPerson && !result.GetValue(noBrowser)
                    ? DemoSession.Run((int?)result.GetValue(port), surroundings) : code;
            },
            "The pages' records are in a folder of their own, which is removed at the end.");
        foreach (Option option in (Option[])[folder, noBrowser, port])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(string? folder, Surroundings surroundings)
    {
        Practical practical = BuiltInPracticals.Find(PracticalId)!;
        using Stream file = Assembly.GetExecutingAssembly().GetManifestResourceStream("demo-class.csv")!;
        ClassReadings readings = ClassFile.Read(file, "the demo's class", practical, BalanceOptions.NothingGiven, surroundings)
            ?? throw new InvalidOperationException("The demo's own class cannot be read.");
        ClassFindings findings = ClassAnalysis.Of(practical, readings, AtomicWeights.Iupac2024);
        surroundings.Output.WriteLine($"{ClassName} (an invented class; no such school, no such readings)");
        surroundings.Output.WriteLine();
        FindingsText.Write(surroundings.Output, findings);
        return WriteReport(findings, folder ?? ".", surroundings);
    }

    private static int WriteReport(ClassFindings findings, string folder, Surroundings surroundings)
    {
        string html = ClassReport.Html(findings, new ReportHeading(ClassName, date: null, inventedData: true));
        string target = surroundings.FullPath(folder);
        try
        {
            Directory.CreateDirectory(target);
            string path = NewFile.Beside(Path.Combine(target, "calx-demo-report.html"), html, surroundings.Cancellation());
            surroundings.Output.WriteLine();
            surroundings.Output.WriteLine($"The report with charts is in {path}");
            return ExitCode.Done;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine($"{folder}:1:1: the report cannot be written there ({NewFile.ReasonOf(failure)})");
            return ExitCode.CannotWrite;
        }
    }
}
