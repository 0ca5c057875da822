namespace Calx.Practicals.Readings;

/// <summary>What the cells of one column of numbers are read against.</summary>
public sealed class NumberExpectation
{
    /// <summary>Takes what is expected.</summary>
    /// <param name="unit">The unit wanted; g for a mass.</param>
    /// <param name="writtenUnit">The unit of a bare number, from the heading; null takes <paramref name="unit"/>.</param>
    /// <param name="mayBeNegative">Whether a number below zero can be right.</param>
    /// <param name="pointsAround">Whether other numbers of the table have decimal points, so that <c>24,310</c> could
    /// be thousands.</param>
    public NumberExpectation(
        string unit = "g", string? writtenUnit = null, bool mayBeNegative = false, bool pointsAround = false)
    {
        ArgumentNullException.ThrowIfNull(unit);
        Unit = unit;
        WrittenUnit = writtenUnit ?? unit;
        MayBeNegative = mayBeNegative;
        PointsAround = pointsAround;
    }

    /// <summary>The unit wanted.</summary>
    public string Unit { get; }

    /// <summary>The unit of a bare number.</summary>
    public string WrittenUnit { get; }

    /// <summary>Whether a number below zero can be right.</summary>
    public bool MayBeNegative { get; }

    /// <summary>Whether other numbers of the table have decimal points.</summary>
    public bool PointsAround { get; }
}
