using Calx.App.Commands;
using Calx.App.Input;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;

namespace Calx.App.Output;

/// <summary>Writes a class's packs, the key and the truth. No file that is there already is touched.</summary>
internal static class CatchUpFiles
{
    /// <summary>Writes them; tells what was written, and a fault, on standard error.</summary>
    /// <returns>The exit code.</returns>
    public static int Write(CatchUpAnswer answer, CatchUpWords words, IReadOnlyList<Paper> papers, Surroundings surroundings)
    {
        string truth = words.TruthPath(surroundings);
        if (Path.Exists(truth))
        {
            surroundings.Error.WriteLine(Fault.Line(truth, 1, 1, "there is such a file already, and it is left as it is; name another with --truth"));
            return ExitCode.BadInput;
        }

        if (words.Truth is string named && !Directory.Exists(Path.GetDirectoryName(truth)))
        {
            surroundings.Error.WriteLine(Fault.Line(named, 1, 1, "there is no such folder; expected a new file in a folder that is there"));
            return ExitCode.BadInput;
        }

        var order = new PapersOrder([], [], words.Formats, surroundings.FullPath(words.Out!), words.Occasion, words.Look);
        int code = PaperFiles.Write(PaperSet.Of(papers), order, surroundings);
        return code == ExitCode.Done ? WriteTruth(answer, truth, surroundings) : code;
    }

    private static int WriteTruth(CatchUpAnswer answer, string path, Surroundings surroundings)
    {
        try
        {
            using var text = new StringWriter();
            JsonAnswer.Print(text, json => CatchUpJson.Write(json, answer));
            NewFile.Create(path, text.ToString().ReplaceLineEndings("\n"), surroundings.Cancellation());
            surroundings.Error.WriteLine(path);
            return ExitCode.Done;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"the truth cannot be written there ({NewFile.ReasonOf(failure)}); without it the packs can still be marked from the key"));
            return ExitCode.CannotWrite;
        }
    }
}
