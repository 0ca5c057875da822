using System.CommandLine;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Live;
using Calx.App.Own;
using Calx.App.Serving;
using Calx.Records;
using Calx.Records.Archive;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Commands;

/// <summary><c>calx export</c>: one lesson, or everything, as a zip.</summary>
internal static class ExportCommand
{
    private const string Name = "export";

    public static Verb Create()
    {
        var records = new RecordsChoice();
        var lesson = new Option<string?>("--lesson") { Description = "one lesson, by the id in its page's address; otherwise everything", HelpName = "ID" };
        var file = new Option<string?>("--out") { Description = "the zip to write; a new file", HelpName = "FILE" };
        var verb = new Verb(
            Name,
            "Writes the records to a zip: JSON that 'calx import' takes in, and tables (CSV) for other tools.",
            [
                new("calx export --out records.zip", "everything of the school"),
                new("calx export --lesson 7k2m9x4c1v0b --out lesson.zip", "one lesson with its class and balances"),
            ],
            (result, surroundings) => Run(records.Options(result, Name, surroundings), result.GetValue(lesson), result.GetValue(file), surroundings),
            "A file that is there already is left as it is: exit code 2. It may run while 'calx serve' does. Passphrases and codes are not written.");
        verb.Options.Add(lesson);
        verb.Options.Add(file);
        foreach (Option option in records.All)
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(ServeOptions? options, string? lesson, string? file, Surroundings surroundings)
    {
        if (options is null || Fault(options, lesson, file, surroundings) is string fault && Tell(fault, surroundings))
        {
            return ExitCode.BadInput;
        }

        return RecordsChoice.Open(options, Name, surroundings, (store, cancellation) => Write(store, new OwnArchive(options.DataFolder), lesson, file!, surroundings, cancellation))
            .GetAwaiter().GetResult();
    }

    private static string? Fault(ServeOptions options, string? lesson, string? file, Surroundings surroundings) =>
        file is null ? "calx export: to which file? For example: calx export --out records.zip"
        : Path.Exists(surroundings.FullPath(file))
            ? Input.Fault.Line(file, 1, 1, "there is such a file already, and it is left as it is; give another name")
        : lesson is not null && !RecordId.TryParse(lesson, out _)
            ? $"calx export: --lesson: '{lesson}' is no id of a lesson; 12 letters and digits were expected"
        : options.Database is null && !File.Exists(options.Connection)
            ? $"calx export: there are no records in {options.DataFolder}; name their folder with --data"
        : null;

    private static bool Tell(string fault, Surroundings surroundings)
    {
        surroundings.Error.WriteLine(fault);
        return true;
    }

    private static async Task<int> Write(RecordStore store, OwnArchive own, string? lesson, string file, Surroundings surroundings, CancellationToken cancellation)
    {
        Lesson? one = RecordId.TryParse(lesson, out RecordId id) ? await store.FindLesson(id, cancellation) : null;
        if (lesson is not null && one is null)
        {
            surroundings.Error.WriteLine($"calx export: --lesson: there is no lesson {lesson} in these records");
            return ExitCode.BadInput;
        }

        try
        {
            using var zip = new MemoryStream();
            await (lesson is null ? LessonArchive.WriteAll(store, zip, TableNames.Of, cancellation) : LessonArchive.WriteLesson(store, id, zip, TableNames.Of, cancellation));
            PracticalFiles.Add(zip, own.Files(one?.PracticalId));
            NewFile.Create(surroundings.FullPath(file), zip.GetBuffer().AsSpan(0, (int)zip.Length), cancellation);
            surroundings.Error.WriteLine($"The records are in {file}");
            return ExitCode.Done;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Input.Fault.Line(file, 1, 1, $"it cannot be written there ({NewFile.ReasonOf(failure)})"));
            return ExitCode.CannotWrite;
        }
    }
}
