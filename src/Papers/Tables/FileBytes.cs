namespace Calx.Papers.Tables;

/// <summary>Reads a file into memory as far as is allowed.</summary>
internal static class FileBytes
{
    /// <summary>The bytes of a stream, or null where there are more than allowed. The length that a stream claims is not relied on: a
    /// device or a pipe claims none.</summary>
    public static byte[]? Of(Stream stream, long most)
    {
        if (stream.CanSeek && stream.Length - stream.Position > most)
            return null;
        using MemoryStream kept = new();
        byte[] block = new byte[81_920];
        for (int read = stream.Read(block); read > 0; read = stream.Read(block))
        {
            if (kept.Length + read > most)
                return null;
            kept.Write(block, 0, read);
        }
        return kept.ToArray();
    }
}
