using System.Text;
using Calx.App.Output;

namespace Calx.App.Input;

/// <summary>Reads the small text files that people write by hand: models, lists of equations, definitions.</summary>
internal static class TextFile
{
    /// <summary>Hand-written files are a few kilobytes; a larger one is another file than was meant.</summary>
    public const int LargestInBytes = 4 * 1024 * 1024;

    /// <summary>Reads a UTF-8 file, with or without a byte order mark.</summary>
    /// <param name="surroundings">Where a relative path starts.</param>
    /// <param name="path">The path as the person wrote it; messages repeat it so.</param>
    /// <param name="expected">What the file should hold, for the message: 'one equation a line'.</param>
    public static FileText Read(Surroundings surroundings, string path, string expected)
    {
        string full = surroundings.FullPath(path);
        if (Directory.Exists(full))
        {
            return Fault(path, $"this is a folder; expected a file with {expected}");
        }

        try
        {
            // Asked of the open file, so that a pipe or device of no length is bounded too.
            using FileStream stream = File.OpenRead(full);
            return FromStream(stream, path, expected);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Fault(path, $"there is no such file; expected a file with {expected}");
        }
        catch (UnauthorizedAccessException)
        {
            return Fault(path, $"this file may not be read by you; expected a file with {expected}");
        }
        catch (IOException failure)
        {
            return Fault(path, $"the file cannot be read ({failure.Message}); expected a file with {expected}");
        }
    }

    private static FileText FromStream(FileStream stream, string path, string expected)
    {
        byte[] bytes = new byte[LargestInBytes + 1];
        int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (length > LargestInBytes)
        {
            return Fault(path, $"the file is larger than {LargestInBytes / 1024 / 1024} MB; expected {expected}");
        }

        ReadOnlySpan<byte> content = bytes.AsSpan(0, length);
        if (content.StartsWith(Encoding.UTF8.Preamble))
        {
            content = content[Encoding.UTF8.Preamble.Length..];
        }

        if (content.IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            return Fault(path, $"the file is empty; expected {expected}");
        }

        // A zero byte is in every picture, archive or workbook and in no text.
        if (content.Contains((byte)0))
        {
            return Fault(path, $"the file is not text; expected {expected}");
        }

        try
        {
            return new FileText.Read(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(content));
        }
        catch (DecoderFallbackException)
        {
            return Fault(path, $"the file is not UTF-8 text; expected {expected}");
        }
    }

    private static FileText.Unreadable Fault(string path, string reason) => new($"{path}:1:1: {reason}");
}
