namespace Calx.Practicals.Inference.Concluding;

/// <summary>Which of a few numbers a value is nearest to, by ratio.</summary>
internal static class NearestNumber
{
    /// <summary>Its place. Between two numbers the border is where the value is as many times the lower as the upper is times it.</summary>
    /// <param name="among">The numbers, above 0 and rising.</param>
    /// <param name="value">The value.</param>
    public static int Of(IReadOnlyList<double> among, double value)
    {
        int nearest = 0;
        for (int i = 1; i < among.Count; i++)
        {
            nearest = value * value > among[i - 1] * among[i] ? i : nearest;
        }

        return nearest;
    }
}
