namespace Calx.Practicals.Learning;

/// <summary>What was seen in a lesson that is over. When it was does not matter, only that it was before the next.</summary>
public sealed class PastLesson
{
    /// <summary>Takes a lesson.</summary>
    /// <param name="school">Name of the school; may be empty where there is only one.</param>
    /// <param name="className">Name of the class: lessons of one school with the same name were given to the same class.</param>
    /// <param name="steps">How long groups took, in any order.</param>
    /// <param name="faults">Faults that were looked for.</param>
    /// <param name="kit">Pieces of kit that were used.</param>
    public PastLesson(
        string school, string className, IReadOnlyList<StepSeen> steps, IReadOnlyList<FaultSeen> faults, IReadOnlyList<KitSeen> kit)
    {
        ArgumentNullException.ThrowIfNull(school);
        ArgumentNullException.ThrowIfNull(className);
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentNullException.ThrowIfNull(faults);
        ArgumentNullException.ThrowIfNull(kit);
        (School, ClassName, Steps, Faults, Kit) = (school, className, steps, faults, kit);
    }

    /// <summary>Name of the school.</summary>
    public string School { get; }

    /// <summary>Name of the class.</summary>
    public string ClassName { get; }

    /// <summary>How long groups took; a group that is missing was not timed.</summary>
    public IReadOnlyList<StepSeen> Steps { get; }

    /// <summary>Faults that were looked for; one that is missing says nothing of how often it happens.</summary>
    public IReadOnlyList<FaultSeen> Faults { get; }

    /// <summary>Pieces of kit that were used; one that is missing was not counted.</summary>
    public IReadOnlyList<KitSeen> Kit { get; }
}
