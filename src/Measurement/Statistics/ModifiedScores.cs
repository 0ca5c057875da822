namespace Calx.Measurement.Statistics;

/// <summary>
/// How far each value lies from the median in robust standard deviations: the modified z-score 0.6745(x - median)/MAD of
/// Iglewicz and Hoaglin, How to Detect and Handle Outliers (ASQC, 1993). A score names a value worth a look; it says
/// nothing of the cause.
/// </summary>
public sealed class ModifiedScores
{
    /// <summary>The limit beyond which Iglewicz and Hoaglin call a value a possible outlier.</summary>
    public const double UsualLimit = 3.5;

    private const double NormalQuartile = 0.6745;

    private ModifiedScores(double median, double scale, bool scaleIsFloor, double[] scores)
    {
        Median = median;
        Scale = scale;
        ScaleIsFloor = scaleIsFloor;
        Scores = scores;
    }

    /// <summary>The median of the values.</summary>
    public double Median { get; }

    /// <summary>The robust standard deviation that the scores are counted in, in the unit of the values.</summary>
    public double Scale { get; }

    /// <summary>Whether the values agreed better than the floor, which was then taken for the scale.</summary>
    public bool ScaleIsFloor { get; }

    /// <summary>The score of each value in the order given, with its sign.</summary>
    public IReadOnlyList<double> Scores { get; }

    /// <summary>Scores values.</summary>
    /// <param name="values">One value or more.</param>
    /// <param name="scaleFloor">
    /// The least standard deviation that the measuring itself allows, above 0, in the unit of the values, such as the
    /// standard uncertainty of one value: without it the odd digit in a list of equal readings would be infinitely far out.
    /// </param>
    /// <exception cref="ArgumentException">No values, or one not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="scaleFloor"/> is not above 0.</exception>
    public static ModifiedScores Of(ReadOnlySpan<double> values, double scaleFloor)
    {
        Require.Finite(values, 1);
        Require.Positive(scaleFloor);
        double median = Summary.Median(values);
        double spread = Summary.UnscaledMedianAbsoluteDeviation(values) / NormalQuartile;
        double scale = Math.Max(spread, scaleFloor);
        double[] scores = Array.ConvertAll(values.ToArray(), value => (value - median) / scale);
        return new ModifiedScores(median, scale, spread < scaleFloor, scores);
    }

    /// <summary>Whether the value at a place of the list lies beyond the limit.</summary>
    public bool IsFarOut(int place, double limit = UsualLimit) => Math.Abs(Scores[place]) > limit;
}
