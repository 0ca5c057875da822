using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Week;

/// <summary>A lesson of a technician's week.</summary>
public sealed class WeekLesson
{
    /// <summary>Takes it.</summary>
    /// <param name="date">Its day.</param>
    /// <param name="occasion">Class, room, period and teacher, as far as they were said.</param>
    /// <param name="plan">What is planned.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    /// <param name="isCover">Whether it is a cover lesson, for which nothing is wanted.</param>
    /// <param name="address">Where its papers are on the pages, or null.</param>
    public WeekLesson(DateOnly date, PaperOccasion occasion, PlanSettings plan, PlanStock? stock = null, bool isCover = false, string? address = null)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        ArgumentNullException.ThrowIfNull(plan);
        (Date, Occasion, Plan, Stock, IsCover, Address) = (date, occasion, plan, stock ?? PlanStock.Unknown, isCover, address);
        Kit = isCover ? [] : [.. plan.Practical.Kit.Select(item => KitCount.Of(item, plan))];
        Preparation = isCover ? [] : [.. RequisitionSheet.Prepared(plan)];
    }

    /// <summary>Its day.</summary>
    public DateOnly Date { get; }

    /// <summary>Class, room, period and teacher.</summary>
    public PaperOccasion Occasion { get; }

    /// <summary>What is planned.</summary>
    public PlanSettings Plan { get; }

    /// <summary>What is known of the school's stock.</summary>
    public PlanStock Stock { get; }

    /// <summary>Whether nothing is wanted.</summary>
    public bool IsCover { get; }

    /// <summary>Where its papers are on the pages, or null.</summary>
    public string? Address { get; }

    /// <summary>What is put out, spares as its requisition has them.</summary>
    public IReadOnlyList<KitCount> Kit { get; }

    /// <summary>What is prepared, with minutes.</summary>
    public IReadOnlyList<(PreparationStep Step, double Minutes)> Preparation { get; }

    /// <summary>Whether something is still hot when the class leaves.</summary>
    public bool LeavesHotThings => !IsCover && Plan.Practical.Cooling is not null && Plan.Practical.Kit.Any(k => k.Flame);

    /// <summary>The period without spaces round it and in small letters, by which two lessons are at the same time; null where none was said.</summary>
    internal string? Period => Occasion.Period?.Trim() is { Length: > 0 } said ? said.ToLowerInvariant() : null;

    /// <summary>By what people call it on a list: period, class, room.</summary>
    internal string NameIn(PaperLanguage language) =>
        string.Join(", ", new[] { PaperOccasion.InWords(Occasion.Period?.Trim(), language), Occasion.ClassName, Occasion.Room }.Where(t => !string.IsNullOrEmpty(t)));
}
