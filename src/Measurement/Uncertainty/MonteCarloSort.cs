using System.Runtime.InteropServices;

namespace Calx.Measurement.Uncertainty;

/// <summary>
/// Sorts finite numbers by the digits of their binary form, eleven bits at a time from the lowest: time in proportion to
/// the count. A minus zero comes before zero.
/// </summary>
internal static class MonteCarloSort
{
    private const int DigitBits = 11;
    private const int Digits = 6;
    private const int Values = 1 << DigitBits;
    private const ulong Sign = 1UL << 63;

    // Below this the counting of digits costs more than it saves.
    private const int WorthCounting = 2_000;

    /// <summary>Puts values in rising order.</summary>
    public static void Sort(double[] values)
    {
        if (values.Length < WorthCounting)
        {
            Array.Sort(values);
            return;
        }

        Span<ulong> keys = MemoryMarshal.Cast<double, ulong>(values.AsSpan());
        foreach (ref ulong key in keys)
        {
            // Bits of negative numbers fall as the number rises: turn all; of others turn the sign alone.
            key ^= unchecked((ulong)((long)key >> 63)) | Sign;
        }

        Span<ulong> sorted = SortKeys(keys, GC.AllocateUninitializedArray<ulong>(keys.Length));
        for (int i = 0; i < keys.Length; i++)
        {
            ulong key = sorted[i];
            keys[i] = key ^ (unchecked((key >> 63) - 1) | Sign);
        }
    }

    private static Span<ulong> SortKeys(Span<ulong> from, Span<ulong> to)
    {
        int[][] counts = Count(from);
        for (int digit = 0; digit < Digits; digit++)
        {
            int shift = digit * DigitBits;
            int[] count = counts[digit];
            if (count[(int)((from[0] >> shift) & (Values - 1))] == from.Length)
            {
                continue;
            }

            PlacesFrom(count);
            foreach (ulong key in from)
            {
                to[count[(int)((key >> shift) & (Values - 1))]++] = key;
            }

            Span<ulong> free = from;
            from = to;
            to = free;
        }

        return from;
    }

    private static int[][] Count(ReadOnlySpan<ulong> keys)
    {
        int[][] counts = [.. Enumerable.Range(0, Digits).Select(_ => new int[Values])];
        foreach (ulong key in keys)
        {
            for (int digit = 0; digit < Digits; digit++)
            {
                counts[digit][(int)((key >> (digit * DigitBits)) & (Values - 1))]++;
            }
        }

        return counts;
    }

    private static void PlacesFrom(int[] counts)
    {
        int place = 0;
        for (int value = 0; value < counts.Length; value++)
        {
            int count = counts[value];
            counts[value] = place;
            place += count;
        }
    }
}
