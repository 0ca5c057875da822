using System.CommandLine;
using Calx.App.Checking;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Own;

namespace Calx.App.Commands;

/// <summary><c>calx practicals check</c>: everything that can be said of a practical's file before anybody tries it.</summary>
internal static class PracticalsCheckCommand
{
    public static Verb Create()
    {
        var file = new Argument<string?>("FILE") { Description = "a practical's file (YAML), or the id of one of your own", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> data = PracticalChoice.CreateData();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "check",
            "Names every fault of a practical's file with its line and column, its reason and its cure; gives the theory values that the file implies; and tries it out on an invented class.",
            [new("calx practicals check my-practical.yaml", "is this file right?")],
            (result, surroundings) => Run(result.GetValue(file), result.GetValue(data), result.GetValue(json), surroundings),
            "Exit code 2 where the file cannot be used; 1 where it can, but something in it cannot come out (a quantity that no reading determines, a conclusion that can never hold) "
            + "or has to be looked up before a class does it (a hazard that is not known). In order is not safe: your employer's risk assessment decides.");
        verb.Arguments.Add(file);
        verb.Options.Add(data);
        verb.Options.Add(json);
        return verb;
    }

    private static int Run(string? named, string? data, bool asJson, Surroundings surroundings)
    {
        if (named is null)
        {
            surroundings.Error.WriteLine("calx practicals check: which file? For example: calx practicals check my-practical.yaml");
            return ExitCode.BadInput;
        }

        if (PathOf(named, data, surroundings) is not string path)
        {
            return ExitCode.BadInput;
        }

        switch (TextFile.Read(surroundings, path, "a practical"))
        {
            case FileText.Unreadable unreadable:
                surroundings.Error.WriteLine(unreadable.Line);
                return ExitCode.BadInput;
            case FileText.Read read:
                return Tell(FullCheck.Of(read.Text, path, surroundings.Cancellation()), asJson, surroundings);
            default:
                throw new InvalidOperationException("No other case of a text file exists.");
        }
    }

    /// <summary>A word that is no file may be the id of a practical of one's own; null after telling that several files say so.</summary>
    private static string? PathOf(string named, string? data, Surroundings surroundings)
    {
        var own = OwnFolder.In(surroundings.DataFolder(data));
        string[] files = Path.Exists(surroundings.FullPath(named)) ? [] : [.. own.FilesCalled(named)];
        if (files.Length > 1)
        {
            surroundings.Error.WriteLine($"calx practicals check: several of your files say that they are '{named}': {string.Join(", ", files)}; give all but one another id");
            return null;
        }

        return files.Length == 1 ? Path.Combine(own.Path, files[0]) : named;
    }

    private static int Tell(FullCheck check, bool asJson, Surroundings surroundings)
    {
        CheckText.WriteFindings(surroundings.Error, check);
        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => CheckJson.Write(json, check));
        }
        else
        {
            CheckText.Write(surroundings.Output, check);
        }

        return check.Checked.Practical is null ? ExitCode.BadInput : check.IsInOrder ? ExitCode.Done : ExitCode.No;
    }
}
