namespace Calx.Measurement.Statistics;

/// <summary>Variance components from mean squares: ISO 5725-2:1994, 7.4.</summary>
internal static class GroupAnova
{
    public static GroupSpread Fit(GroupTotals totals)
    {
        double within = totals.WithinSquares / totals.WithinDegrees;
        double between = totals.BetweenSquares / (totals.GroupCount - 1);
        double squares = totals.Sizes.Sum(size => (double)size * size);
        double typicalSize = (totals.ValueCount - (squares / totals.ValueCount)) / (totals.GroupCount - 1);
        double variance = Math.Max(0, (between - within) / typicalSize);
        // The mean weighted with group sizes has variance Σ n²(s_L² + s_r²/n)/N².
        double count = totals.ValueCount;
        double uncertainty = Math.Sqrt((variance * squares / (count * count)) + (within / count));
        return new GroupSpread(
            totals.Centre, uncertainty, Math.Sqrt(within), BetweenSpread.OfVariance(variance), totals);
    }
}
