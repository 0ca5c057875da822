namespace Calx.Practicals.Definition;

/// <summary>What the lesson takes, and what keeps it safe.</summary>
internal sealed record LessonPlan(
    IReadOnlyList<LessonStep> Steps,
    IReadOnlyList<KitItem> Kit,
    AmountLimits Limits,
    AmountsDefinition? Amounts,
    ClassroomDefinition Classroom,
    IReadOnlyList<Hazard> Hazards,
    IReadOnlyList<Drawing> Drawings);
