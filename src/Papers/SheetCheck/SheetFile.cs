using Calx.Papers.Tables;

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
    public static SheetFile Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (Directory.Exists(path))
        {
            return new Fault("a folder, not a file; name the worksheet in it");
        }

        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return Read(file);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException or ArgumentException or NotSupportedException)
        {
            return new Fault("there is no such file");
        }
        catch (UnauthorizedAccessException)
        {
            return new Fault("you may not read this file");
        }
        catch (IOException)
        {
            return new Fault("the file cannot be read; close it in other programs and try again");
        }
    }

    /// <summary>Reads a worksheet from a stream, which is left open.</summary>
    /// <exception cref="IOException">The stream itself failed.</exception>
    public static SheetFile Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return FileBytes.Of(stream, SheetLimits.LargestFile) is byte[] bytes
            ? SheetContent.Read(bytes)
            : new Fault($"larger than {SheetLimits.LargestFile / 1_000_000} MB; take the pictures out and try again");
    }

    /// <summary>The file was read.</summary>
    public sealed record Opened(Sheet Sheet) : SheetFile;

    /// <summary>The file was not read.</summary>
    /// <param name="Reason">What is wrong and what to do, without a full stop.</param>
    public sealed record Fault(string Reason) : SheetFile;
}
