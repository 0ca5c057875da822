namespace Calx.Measurement.Statistics;

/// <summary>Readings as whole numbers of their smallest common step, in which sums can be counted exactly.</summary>
internal static class WholeNumbers
{
    /// <summary>The values in steps of their greatest common divisor, or null where they do not fit a 32-bit number.</summary>
    public static int[]? Of(ReadOnlySpan<decimal> values)
    {
        int decimals = 0;
        foreach (decimal value in values)
        {
            decimals = Math.Max(decimals, value.Scale);
        }

        long[] scaled = new long[values.Length];
        for (int i = 0; i < scaled.Length; i++)
        {
            decimal whole = Math.Abs(values[i]) < Largest(decimals) ? values[i] * PowerOfTen(decimals) : decimal.MaxValue;
            if (whole == decimal.MaxValue)
            {
                return null;
            }

            scaled[i] = (long)whole;
        }

        long step = Math.Max(1, scaled.Aggregate(0L, (divisor, value) => Common(divisor, Math.Abs(value))));
        return scaled.All(value => Math.Abs(value / step) <= int.MaxValue)
            ? Array.ConvertAll(scaled, value => (int)(value / step))
            : null;
    }

    private static decimal Largest(int decimals) => decimals > 17 ? 0 : 1e18m / PowerOfTen(decimals);

    private static decimal PowerOfTen(int power)
    {
        decimal result = 1;
        for (int i = 0; i < power; i++)
        {
            result *= 10;
        }

        return result;
    }

    private static long Common(long left, long right) => right == 0 ? left : Common(right, left % right);
}
