using System.CommandLine;
using System.Globalization;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Own;
using Calx.App.Serving;
using Calx.Records.Archive;
using Calx.Records.Storage;

namespace Calx.App.Commands;

/// <summary><c>calx import</c>: takes in what <c>calx export</c> wrote.</summary>
internal static class ImportCommand
{
    private const string Name = "import";
    private const string By = "command line";

    public static Verb Create()
    {
        var records = new RecordsChoice();
        var file = new Argument<string?>("FILE") { Description = "a zip from 'calx export' or from the page of the records", Arity = ArgumentArity.ZeroOrOne };
        var verb = new Verb(
            Name,
            "Takes records in from a zip. What is there already stays as it is; the rest is added.",
            [new("calx import records.zip", "the records of another machine, or of an earlier day")],
            (result, surroundings) => Run(records.Options(result, Name, surroundings), result.GetValue(file), surroundings),
            "Exit code 1 where something was not taken, since another record is kept under its id or name; each is told. It may run while 'calx serve' does.");
        verb.Arguments.Add(file);
        foreach (Option option in records.All)
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(ServeOptions? options, string? file, Surroundings surroundings)
    {
        if (options is null)
        {
            return ExitCode.BadInput;
        }

        if (file is null)
        {
            surroundings.Error.WriteLine("calx import: which file? For example: calx import records.zip");
            return ExitCode.BadInput;
        }

        try
        {
            using FileStream zip = File.OpenRead(surroundings.FullPath(file));
            Directory.CreateDirectory(options.DataFolder);
            return RecordsChoice.Open(
                options,
                Name,
                surroundings,
                async (store, cancellation) =>
                {
                    ImportResult result = await LessonArchive.Read(store, zip, By, cancellation);
                    return Tell(result is ImportResult.Taken taken ? await new OwnArchive(options.DataFolder).TakeIn(zip, taken, cancellation) : result, file, surroundings);
                }).GetAwaiter().GetResult();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            string reason = failure is FileNotFoundException ? "there is no such file"
                : Directory.Exists(surroundings.FullPath(file)) ? "this is a folder; name a zip in it" : failure.Message;
            surroundings.Error.WriteLine(Fault.Line(file, 1, 1, reason));
            return ExitCode.BadInput;
        }
    }

    private static int Tell(ImportResult result, string file, Surroundings surroundings)
    {
        if (result is not ImportResult.Taken taken)
        {
            surroundings.Error.WriteLine(Fault.Line(file, 1, 1, ((ImportResult.Unreadable)result).Reason));
            return ExitCode.BadInput;
        }

        surroundings.Output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{file}: {taken.Added} new, {taken.Known} here already just so, {taken.Refused.Count} not taken."));
        foreach (string sentence in taken.Refused)
        {
            surroundings.Output.WriteLine(sentence);
        }

        return taken.Refused.Count > 0 ? ExitCode.No : ExitCode.Done;
    }
}
