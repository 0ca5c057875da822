namespace Calx.Papers.Charts;

/// <summary>How large a chart of a class is, in units of its picture. Its letters are 15 units high, so that the fewer units there are from
/// side to side, the larger they are on paper.</summary>
/// <param name="Width">From side to side.</param>
/// <param name="Height">From top to bottom, where that does not follow from the number of groups.</param>
/// <param name="RowHeight">Height of a row, where each group has one.</param>
/// <param name="MostForNames">Names of groups take no more of the width.</param>
/// <param name="BelowFrame">Room for the ticks and the name of the axis along the bottom.</param>
internal sealed record ChartSize(double Width, double Height, double RowHeight, double MostForNames, double BelowFrame)
{
    /// <summary>On a page, or from margin to margin on paper.</summary>
    public static ChartSize Whole { get; } = new(620, 430, 25, 190, 58);

    /// <summary>Half as wide as a sheet: 430 units are some 86 mm, so that a label is printed at 8.5 points, a tick at 7.9.</summary>
    public static ChartSize Half { get; } = new(430, 255, 15.5, 120, 50);
}
