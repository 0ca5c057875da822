using System.Text;
using Calx.App.Input;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Marks;
using Calx.Papers.Roster;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.App.Output;

/// <summary>A marked class as files: workbook, slips, a table for a school system. None that is there already is replaced.</summary>
internal static class MarkFiles
{
    /// <summary>Whether all of it can be written, as far as that can be told before anything is marked; tells each fault on standard error.</summary>
    /// <returns>The exit code.</returns>
    public static int Check(MarkOutputWords words, Surroundings surroundings)
    {
        string[] faults = [.. words.Faults()];
        foreach (string fault in faults)
        {
            surroundings.Error.WriteLine($"calx mark: {fault}");
        }

        string[] there = [.. words.Paths.Select(p => p.Path).Where(p => Path.Exists(surroundings.FullPath(p)))];
        foreach (string path in there)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, "there is such a file already, and it is left as it is; give another name"));
        }

        if (faults.Length > 0 || there.Length > 0)
        {
            return faults.Length > 0 ? ExitCode.BadInput : ExitCode.CannotWrite;
        }

        if (IsPdf(words.Slips) && PdfPrinter.Find() is null)
        {
            surroundings.Error.WriteLine($"calx mark: {PdfPrinter.Missing}");
            return ExitCode.CannotWrite;
        }

        return ExitCode.Done;
    }

    /// <summary>Writes what was asked for; tells what was written, and a fault, on standard error.</summary>
    /// <returns>The exit code.</returns>
    public static int Write(MarkOutputWords words, Practical practical, MarkedClass marked, Surroundings surroundings)
    {
        MarksSetting setting = words.Setting(practical, surroundings);
        (string? Path, Func<byte[]> Content)[] files =
        [
            (words.Xlsx, () => MarksWorkbook.Of(marked, setting)),
            (words.Slips, () => Slips(FeedbackSlips.Of(marked, setting), words.Slips!)),
            (words.Roster is string zip && IsZip(zip) ? zip : null, () => RosterResults.Zip(marked, words.About(practical, surroundings))),
            .. words.Roster is string folder && !IsZip(folder) ? InFolder(folder, marked, words.About(practical, surroundings), surroundings) : [],
        ];
        foreach ((string? path, Func<byte[]> content) in files)
        {
            if (path is not null && !TryWrite(path, content, surroundings))
            {
                return ExitCode.CannotWrite;
            }
        }

        return ExitCode.Done;
    }

    private static bool TryWrite(string path, Func<byte[]> content, Surroundings surroundings)
    {
        try
        {
            NewFile.Create(surroundings.FullPath(path), content(), surroundings.Cancellation());
            surroundings.Error.WriteLine(path);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"the marks cannot be written there ({NewFile.ReasonOf(failure)})"));
            return false;
        }
    }

    /// <summary>The folder is made with its first file.</summary>
    private static IEnumerable<(string? Path, Func<byte[]> Content)> InFolder(string folder, MarkedClass marked, RosterAbout about, Surroundings surroundings) =>
        RosterResults.Of(marked, about).Select(file => ((string?)Path.Combine(folder, file.Name), (Func<byte[]>)(() =>
        {
            Directory.CreateDirectory(surroundings.FullPath(folder));
            return Encoding.UTF8.GetBytes(file.Text);
        })));

    private static byte[] Slips(Paper paper, string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".docx" => PaperWord.Of(paper),
        ".pdf" => PaperFiles.Printed(PaperFiles.Page(paper)),
        _ => PaperFiles.Page(paper),
    };

    private static bool IsZip(string path) => Path.GetExtension(path).Equals(".zip", StringComparison.OrdinalIgnoreCase);

    private static bool IsPdf(string? path) => Path.GetExtension(path)?.Equals(".pdf", StringComparison.OrdinalIgnoreCase) is true;
}
