using System.Globalization;
using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Findings.History;

/// <summary>What the classes of several years found in the same practical: whether they agree, whether the value moves, and
/// whether it keeps to one side of the accepted one.</summary>
public sealed class ResultHistory
{
    /// <summary>Fewer lessons than this say nothing of how lessons differ.</summary>
    private const int FewestLessons = 3;

    private const double Level = 0.05;

    private ResultHistory(QuantityDefinition quantity, LessonResult[] lessons, double? accepted)
    {
        Quantity = quantity;
        Lessons = lessons;
        Accepted = accepted;
        Drift = DriftRule.Of("lessons", [.. lessons.Select(l => (l.Day, l.Value, l.StandardUncertainty))]);
        Pooled = lessons.Length == 0 ? null : RandomEffects.FromKnownUncertainties(
            [.. lessons.Select(l => l.Value)], [.. lessons.Select(l => l.StandardUncertainty)]);
        Sentences = [.. new[] { First(), Agreement(), Moved() }.OfType<string>()];
        AgainstAccepted = Side();
    }

    /// <summary>The quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>The lessons by date.</summary>
    public IReadOnlyList<LessonResult> Lessons { get; }

    /// <summary>The accepted value, or null.</summary>
    public double? Accepted { get; }

    /// <summary>All lessons together, or null where there is none.</summary>
    public PooledResult? Pooled { get; }

    /// <summary>Whether the value moves over the years, in the quantity's unit.</summary>
    public Drift Drift { get; }

    /// <summary>What the years show, one to three sentences for the teacher.</summary>
    public IReadOnlyList<string> Sentences { get; }

    /// <summary>All years against the accepted value in one sentence, or null where there is none or too few lessons. Not for
    /// a class's eyes until the teacher shows it.</summary>
    public string? AgainstAccepted { get; }

    /// <summary>Reads the lessons of a practical.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="lessons">Their results, in any order.</param>
    /// <param name="accepted">The accepted value of the key quantity, as <see cref="AcceptedResult.Compared"/> has it; null
    /// where there is none.</param>
    public static ResultHistory Of(Practical practical, IReadOnlyList<LessonResult> lessons, double? accepted = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(lessons);
        QuantityDefinition key = practical.Quantities.First(q => q.Id == practical.Findings.Key);
        return new ResultHistory(key, [.. lessons.OrderBy(l => l.Day).ThenBy(l => l.Label, StringComparer.Ordinal)], accepted);
    }

    private string First()
    {
        if (Pooled is null)
        {
            return "No lesson of this practical has given a value yet.";
        }

        LessonResult last = Lessons[^1];
        string value = Figures.WithUncertainty(last.Value, last.StandardUncertainty) + Quantity.UnitBehind;
        return Lessons.Count == 1
            ? $"One lesson so far: {last.Label} found {value} as the {Quantity.Label}."
            : string.Create(CultureInfo.InvariantCulture, $"{Lessons.Count} lessons so far; the last, {last.Label}, found {value} as the {Quantity.Label}.");
    }

    /// <summary>Cochran's Q against χ²: do lessons differ by more than their own uncertainties?</summary>
    private string? Agreement()
    {
        if (Pooled is null || Lessons.Count < FewestLessons)
        {
            return null;
        }

        int decimals = Figures.DecimalsFor(Pooled.StandardUncertainty);
        string all = $"Together they give {Figures.Text(Pooled.Value, decimals)}{Quantity.UnitBehind} (95 % interval {Figures.Text(Pooled.Interval.Low, decimals)} to {Figures.Text(Pooled.Interval.High, decimals)})";
        return ChiSquared.UpperTail(Pooled.Q, Lessons.Count - 1) < Level
            ? $"{all}, and they differ by more than their own uncertainties explain: something was not the same in every lesson."
            : $"{all}, and they differ by no more than their own uncertainties explain.";
    }

    private string? Moved()
    {
        if (Pooled is null || Drift is not Drift.Judged drift)
        {
            return Pooled is null ? null : ((Drift.Unjudged)Drift).Reason;
        }

        int decimals = Figures.DecimalsFor(drift.Interval.Width / 4);
        string slope = $"{Figures.Text(drift.Slope, decimals)}{Quantity.UnitBehind} a {drift.Per} (95 % interval {Figures.Text(drift.Interval.Low, decimals)} to {Figures.Text(drift.Interval.High, decimals)})";
        return drift.IsBeyondChance
            ? $"The value moves by {slope}, more than chance explains: look for what has changed, such as kit, bottle or instructions."
            : $"No change over the years beyond chance is seen: {slope}.";
    }

    private string? Side()
    {
        if (Accepted is not double accepted || Pooled is null || Lessons.Count < FewestLessons)
        {
            return null;
        }

        double distance = (Pooled.Value - accepted) / Pooled.StandardUncertainty;
        double p = 2 * StudentT.UpperTail(Math.Abs(distance), Pooled.DegreesOfFreedom);
        string apart = Figures.Text(Math.Abs(Pooled.Value - accepted), Figures.DecimalsFor(Pooled.StandardUncertainty)) + Quantity.UnitBehind;
        string side = distance < 0 ? "below" : "above";
        return p < Level
            ? $"All lessons together lie {apart} {side} the accepted value, more than chance explains: what returns year after year belongs to the method, not to one class."
            : $"All lessons together lie {apart} {side} the accepted value, which chance explains.";
    }
}
