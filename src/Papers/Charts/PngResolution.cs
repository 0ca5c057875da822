using System.Buffers.Binary;

namespace Calx.Papers.Charts;

/// <summary>Writes into a bitmap (PNG) how finely it is to be printed, so that programs place it at its size: the chunk <c>pHYs</c>
/// (W3C Portable Network Graphics, third edition, 11.3.4.3).</summary>
internal static class PngResolution
{
    /// <summary>The signature and the chunk <c>IHDR</c>, which every file begins with.</summary>
    private const int Beginning = 8 + 25;

    private const double InchesPerMetre = 1 / 0.0254;
    private const byte Metre = 1;

    /// <summary>The file with its resolution.</summary>
    /// <param name="png">A PNG file that has none.</param>
    /// <param name="dotsPerInch">Dots per inch, across and down.</param>
    public static byte[] Of(byte[] png, double dotsPerInch)
    {
        uint dotsPerMetre = (uint)Math.Round(dotsPerInch * InchesPerMetre);
        byte[] chunk = new byte[4 + 4 + 9 + 4];
        BinaryPrimitives.WriteUInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk.AsSpan(4));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8), dotsPerMetre);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(12), dotsPerMetre);
        chunk[16] = Metre;
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(17), Checksum(chunk.AsSpan(4, 13)));
        return [.. png.AsSpan(0, Beginning), .. chunk, .. png.AsSpan(Beginning)];
    }

    /// <summary>The cyclic redundancy check of PNG chunks (annex D of the same).</summary>
    private static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        uint sum = uint.MaxValue;
        foreach (byte one in bytes)
        {
            sum ^= one;
            for (int bit = 0; bit < 8; bit++)
            {
                sum = (sum & 1) == 1 ? 0xEDB88320 ^ (sum >> 1) : sum >> 1;
            }
        }

        return ~sum;
    }
}
