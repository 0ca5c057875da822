using System.Text;

namespace Calx.App.Output;

/// <summary>Writes a result to disk whole or not at all.</summary>
internal static class NewFile
{
    /// <summary>
    /// Writes UTF-8 text to a file beside the target and then renames it, so that neither a fault nor Ctrl-C leaves
    /// half a file. The person named this file: an older one of that name is replaced.
    /// </summary>
    /// <exception cref="IOException">The folder is missing, full, or may not be written.</exception>
    public static void Replace(string fullPath, string text, CancellationToken cancellation) =>
        Write(fullPath, Bytes(text), overwrite: true, cancellation);

    /// <summary>The same, but never replaces a file: for data that could take the place of a class's own.</summary>
    /// <exception cref="IOException">There is such a file, or the folder is missing, full, or may not be written.</exception>
    public static void Create(string fullPath, string text, CancellationToken cancellation) =>
        Create(fullPath, Bytes(text), cancellation);

    /// <summary>The same for what is no text.</summary>
    /// <exception cref="IOException">There is such a file, or the folder is missing, full, or may not be written.</exception>
    public static void Create(string fullPath, ReadOnlySpan<byte> content, CancellationToken cancellation) =>
        Write(fullPath, content, overwrite: false, cancellation);

    /// <summary>The same under a name that the person did not choose: never replaces a file.</summary>
    /// <returns>The path written: <paramref name="fullPath"/>, or the first free one of <c>name-2</c>, <c>name-3</c> ...
    /// </returns>
    /// <exception cref="IOException">The folder is missing, full, or may not be written.</exception>
    public static string Beside(string fullPath, string text, CancellationToken cancellation)
    {
        for (int number = 1; ; number++)
        {
            string path = number == 1 ? fullPath : Numbered(fullPath, number);
            if (File.Exists(path) || Directory.Exists(path))
            {
                continue;
            }

            try
            {
                Write(path, Bytes(text), overwrite: false, cancellation);
                return path;
            }
            catch (IOException) when (File.Exists(path))
            {
                // Another program took the name between the two steps: on to the next.
            }
        }
    }

    /// <summary>Why a file could not be written, in our own words: those of the system name the file that is renamed
    /// at the end, which nobody asked for.</summary>
    public static string ReasonOf(Exception failure) => failure switch
    {
        DirectoryNotFoundException => "there is no such folder",
        UnauthorizedAccessException => "you may not write there",
        _ => failure.Message,
    };

    private static string Numbered(string fullPath, int number) => Path.Combine(
        Path.GetDirectoryName(fullPath)!,
        $"{Path.GetFileNameWithoutExtension(fullPath)}-{number}{Path.GetExtension(fullPath)}");

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static void Write(string fullPath, ReadOnlySpan<byte> content, bool overwrite, CancellationToken cancellation)
    {
        if (Directory.Exists(fullPath))
        {
            throw new IOException("this is a folder; name a file in it");
        }

        string part = $"{fullPath}.{Guid.NewGuid():N}.part";
        try
        {
            File.WriteAllBytes(part, content);
            cancellation.ThrowIfCancellationRequested();
            File.Move(part, fullPath, overwrite);
        }
        finally
        {
            // Where the rename succeeded there is nothing of this name left, and Delete does nothing.
            File.Delete(part);
        }
    }
}
