using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Findings.History;

/// <summary>A class's value of a practical's key quantity in one lesson, to be held against other years.</summary>
public sealed class LessonResult
{
    /// <summary>Takes a result.</summary>
    /// <param name="label">The lesson in a few words: '2025/26 9F'; not empty.</param>
    /// <param name="day">When.</param>
    /// <param name="value">The class's value.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, above 0.</param>
    /// <param name="interval">Its 95 % interval.</param>
    /// <exception cref="ArgumentException">The label is empty, or a number is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is not above 0.</exception>
    public LessonResult(string label, DateOnly day, double value, double standardUncertainty, CoverageInterval interval)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(label);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardUncertainty);
        if (!double.IsFinite(value) || !double.IsFinite(standardUncertainty) || !double.IsFinite(interval.Width))
        {
            throw new ArgumentException("A result is a finite number with a finite interval.", nameof(value));
        }

        Label = label;
        Day = day;
        Value = value;
        StandardUncertainty = standardUncertainty;
        Interval = interval;
    }

    /// <summary>The lesson in a few words.</summary>
    public string Label { get; }

    /// <summary>When.</summary>
    public DateOnly Day { get; }

    /// <summary>The class's value.</summary>
    public double Value { get; }

    /// <summary>Its standard uncertainty.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Its 95 % interval.</summary>
    public CoverageInterval Interval { get; }

    /// <summary>The result of a class, or null where its readings give none.</summary>
    /// <param name="label">The lesson in a few words.</param>
    /// <param name="day">When.</param>
    /// <param name="findings">What the class's readings show.</param>
    public static LessonResult? Of(string label, DateOnly day, ClassFindings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        return findings.Class.Find(findings.Practical.Findings.Key) is { StandardUncertainty: > 0 } key
            ? new LessonResult(label, day, key.Value, key.StandardUncertainty, key.Interval) : null;
    }
}
