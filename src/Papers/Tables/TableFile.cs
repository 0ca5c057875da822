using Calx.Papers.Texts;
using Calx.Practicals.Readings;

namespace Calx.Papers.Tables;

/// <summary>What came of opening a file that should hold a table: its sheets, or the fault of the file.</summary>
public abstract record TableFile
{
    private TableFile()
    {
    }

    /// <summary>Reads a CSV or XLSX file; its content decides which it is, not its name.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="limits">How large a file is read; null for the usual limits.</param>
    /// <param name="language">The language of what is said of it; null for British English.</param>
    public static TableFile Read(string path, TableLimits? limits = null, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        TableTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        if (Directory.Exists(path))
            return new Fault(TableFaultKind.Folder, texts.Folder);
        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return Read(file, limits, language);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException or ArgumentException or NotSupportedException)
        {
            return new Fault(TableFaultKind.NotFound, texts.NoFile);
        }
        catch (UnauthorizedAccessException)
        {
            return new Fault(TableFaultKind.NotAllowed, texts.NotAllowed);
        }
        catch (IOException)
        {
            return new Fault(TableFaultKind.NotAllowed, texts.InUse);
        }
    }

    /// <summary>Reads a CSV or XLSX file from a stream, which is left open and need not be seekable.</summary>
    /// <param name="stream">The bytes of the file.</param>
    /// <param name="limits">How large a file is read; null for the usual limits.</param>
    /// <param name="language">The language of what is said of it; null for British English.</param>
    /// <exception cref="IOException">The stream itself failed.</exception>
    public static TableFile Read(Stream stream, TableLimits? limits = null, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        TableTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        limits ??= TableLimits.Usual;
        return FileBytes.Of(stream, limits.LargestFile) is byte[] bytes
            ? FileContent.Read(bytes, limits, texts)
            : new Fault(TableFaultKind.TooLarge, texts.TooLarge(FileContent.Megabytes(limits.LargestFile)));
    }

    /// <summary>The file was read.</summary>
    /// <param name="Sheets">Its visible sheets that hold anything, in order; a CSV file has one without a name.</param>
    /// <param name="Format">What it was taken for: encoding and separator of a text, or workbook.</param>
    /// <param name="Notes">What a person should know: hidden sheets passed over, formulas without a value.</param>
    public sealed record Opened(IReadOnlyList<CellTable> Sheets, string Format, IReadOnlyList<string> Notes) : TableFile;

    /// <summary>The file was not read.</summary>
    /// <param name="Kind">Why.</param>
    /// <param name="Reason">What is wrong and what to do, a sentence without a full stop.</param>
    public sealed record Fault(TableFaultKind Kind, string Reason) : TableFile;
}
