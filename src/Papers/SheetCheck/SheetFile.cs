using Calx.Papers.Tables;
using Calx.Papers.Texts;

namespace Calx.Papers.SheetCheck;

/// <summary>What came of opening a file that should hold a worksheet.</summary>
public abstract record SheetFile
{
    private SheetFile()
    {
    }

    /// <summary>Reads a DOCX or plain text file; its content decides which it is, not its name. Nothing in it is executed and nothing
    /// outside it is fetched.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="language">The language of what is said of it; null for British English.</param>
    public static SheetFile Read(string path, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        SheetCheckTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        if (Directory.Exists(path))
        {
            return new Fault(texts.Folder);
        }

        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return Read(file, language);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException or ArgumentException or NotSupportedException)
        {
            return new Fault(texts.NoFile);
        }
        catch (UnauthorizedAccessException)
        {
            return new Fault(texts.NotAllowed);
        }
        catch (IOException)
        {
            return new Fault(texts.InUse);
        }
    }

    /// <summary>Reads a worksheet from a stream, which is left open.</summary>
    /// <param name="stream">The stream.</param>
    /// <param name="language">The language of what is said of it; null for British English.</param>
    /// <exception cref="IOException">The stream itself failed.</exception>
    public static SheetFile Read(Stream stream, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        SheetCheckTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        return FileBytes.Of(stream, SheetLimits.LargestFile) is byte[] bytes
            ? new SheetContent(texts).Read(bytes)
            : new Fault(texts.TooLarge(SheetContent.Megabytes(SheetLimits.LargestFile)));
    }

    /// <summary>The file was read.</summary>
    public sealed record Opened(Sheet Sheet) : SheetFile;

    /// <summary>The file was not read.</summary>
    /// <param name="Reason">What is wrong and what to do, without a full stop.</param>
    public sealed record Fault(string Reason) : SheetFile;
}
