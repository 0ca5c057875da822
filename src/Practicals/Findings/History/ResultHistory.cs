using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings.History;

/// <summary>What the classes of several years found in the same practical: whether they agree, whether the value moves, and
/// whether it keeps to one side of the accepted one.</summary>
public sealed class ResultHistory
{
    /// <summary>Fewer lessons than this say nothing of how lessons differ.</summary>
    private const int FewestLessons = 3;

    private const double Level = 0.05;

    private readonly HistoryTexts texts;

    private ResultHistory(QuantityDefinition quantity, LessonResult[] lessons, double? accepted, EngineLanguage language)
    {
        texts = new HistoryTexts(language);
        Quantity = quantity;
        Lessons = lessons;
        Accepted = accepted;
        Drift = DriftRule.Of(texts.ThreeLessons, texts.NoLineOfLessons, [.. lessons.Select(l => (l.Day, l.Value, l.StandardUncertainty))]);
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
    /// <param name="language">The language of the sentences; British where nothing else is said.</param>
    public static ResultHistory Of(
        Practical practical, IReadOnlyList<LessonResult> lessons, double? accepted = null, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(lessons);
        QuantityDefinition key = practical.Quantities.First(q => q.Id == practical.Findings.Key);
        return new ResultHistory(
            key, [.. lessons.OrderBy(l => l.Day).ThenBy(l => l.Label, StringComparer.Ordinal)], accepted, language ?? EngineLanguage.British);
    }

    private string First()
    {
        if (Pooled is null)
        {
            return texts.NoLesson;
        }

        LessonResult last = Lessons[^1];
        string value = Figures.WithUncertainty(last.Value, last.StandardUncertainty) + Quantity.UnitBehind;
        return Lessons.Count == 1
            ? texts.OneLesson(last.Label, value, Quantity.Label)
            : texts.SomeLessons(Lessons.Count.InFigures(), last.Label, value, Quantity.Label);
    }

    /// <summary>Cochran's Q against χ²: do lessons differ by more than their own uncertainties?</summary>
    private string? Agreement()
    {
        if (Pooled is null || Lessons.Count < FewestLessons)
        {
            return null;
        }

        int decimals = Figures.DecimalsFor(Pooled.StandardUncertainty);
        string value = Figures.Text(Pooled.Value, decimals) + Quantity.UnitBehind;
        (string low, string high) = (Figures.Text(Pooled.Interval.Low, decimals), Figures.Text(Pooled.Interval.High, decimals));
        return ChiSquared.UpperTail(Pooled.Q, Lessons.Count - 1) < Level
            ? texts.LessonsDiffer(value, low, high) : texts.LessonsAgree(value, low, high);
    }

    private string? Moved()
    {
        if (Pooled is null || Drift is not Drift.Judged drift)
        {
            return Pooled is null ? null : ((Drift.Unjudged)Drift).Reason;
        }

        int decimals = Figures.DecimalsFor(drift.Interval.Width / 4);
        string slope = Figures.Text(drift.Slope, decimals) + Quantity.UnitBehind;
        (string low, string high) = (Figures.Text(drift.Interval.Low, decimals), Figures.Text(drift.Interval.High, decimals));
        string moved = drift.IsByYear ? texts.ValueByYear(slope, low, high) : texts.ValueByMonth(slope, low, high);
        return drift.IsBeyondChance ? texts.ValueMoves(moved) : texts.ValueDoesNot(moved);
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
        return (p < Level, distance < 0) switch
        {
            (true, true) => texts.YearsBelow(apart),
            (true, false) => texts.YearsAbove(apart),
            (false, true) => texts.YearsBelowByChance(apart),
            _ => texts.YearsAboveByChance(apart),
        };
    }
}
