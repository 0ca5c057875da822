using System.CommandLine;
using System.Reflection;
using Calx.App.Output;

namespace Calx.App.Commands;

/// <summary>The command line as a whole: <c>calx</c> and the commands below it.</summary>
internal static class AllCommands
{
    /// <summary>The name that the program goes by.</summary>
    public const string ProgramName = "calx";

    public static Verb Create()
    {
        var version = new Option<bool>("--version") { Description = "print the version" };
        var root = new Verb(
            ProgramName,
            "Weighings of a school practical: plans, results with their uncertainty, and what they show.",
            [new("calx demo", "a whole class's result from an invented lesson")],
            (result, surroundings) => Run(result.GetValue(version), surroundings));
        root.Options.Add(version);
        root.Subcommands.Add(AnalyseCommand.Create());
        root.Subcommands.Add(CatchUpCommand.Create());
        root.Subcommands.Add(DemoCommand.Create());
        root.Subcommands.Add(EquationCommand.Create());
        root.Subcommands.Add(ExportCommand.Create());
        root.Subcommands.Add(FormulaCommand.Create());
        root.Subcommands.Add(ImportCommand.Create());
        root.Subcommands.Add(MarkCommand.Create());
        root.Subcommands.Add(PapersCommand.Create());
        root.Subcommands.Add(PlanCommand.Create());
        root.Subcommands.Add(PracticalsCommand.Create());
        root.Subcommands.Add(PropagateCommand.Create());
        root.Subcommands.Add(ServeCommand.Create());
        root.Subcommands.Add(SimulateCommand.Create());
        return root;
    }

    private static int Run(bool versionAsked, Surroundings surroundings)
    {
        if (versionAsked)
        {
            surroundings.Output.WriteLine($"calx {Version()}");
            return ExitCode.Done;
        }

        surroundings.Error.WriteLine("calx: say what to do, for example: calx demo. See calx --help.");
        return ExitCode.BadInput;
    }

    private static string Version() =>
        typeof(AllCommands).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
            .Split('+')[0] ?? "of unknown version";
}
