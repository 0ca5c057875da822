namespace Calx.Engine.Tests.Measurement.Statistics;

/// <summary>Two numbers agree when they differ by no more than a stated amount; rounding both first would not say that.</summary>
internal static class Agree
{
    public static void Within(double tolerance, double expected, double found) =>
        Assert.True(Math.Abs(found - expected) <= tolerance, $"{found:r} is not within {tolerance:g3} of {expected:r}.");

    /// <summary>To a share of the expected value.</summary>
    public static void Relative(double share, double expected, double found) =>
        Within(share * Math.Abs(expected), expected, found);
}
