using Calx.Practicals.Definition;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Learning;

/// <summary>Which learned numbers a plan may take: those accepted for the school, those for one class, or none.</summary>
public sealed class PlanNumbers
{
    /// <summary>The choice of a plan that takes the practical's file as it is.</summary>
    public const string File = "file";

    /// <summary>Stands before the class in the choice of a class's numbers.</summary>
    public const string ClassPrefix = "class:";

    private readonly Func<string, AcceptedNumbers?> inForce;

    private PlanNumbers(Func<string, AcceptedNumbers?> inForce, IReadOnlyList<string> classes) => (this.inForce, Classes) = (inForce, classes);

    /// <summary>No learned numbers at all.</summary>
    public static PlanNumbers None { get; } = new(_ => null, []);

    /// <summary>Classes that have numbers of their own.</summary>
    public IReadOnlyList<string> Classes { get; }

    /// <summary>Whether there is anything to choose.</summary>
    public bool Any => Classes.Count > 0 || inForce("") is not null;

    /// <summary>Those that hold for a practical now.</summary>
    public static async Task<PlanNumbers> Now(RecordStore store, Practical practical, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(practical);
        IReadOnlyList<NumberDecision> decisions = await store.Decisions(practical.Id, cancellation);
        return decisions.Count == 0 ? None : new(
            className => AcceptedNumbers.InForce(practical, decisions, className),
            [.. AcceptedNumbers.Standing(decisions, practical.Version).Where(d => !d.IsTakenBack && d.ClassName.Length > 0).Select(d => d.ClassName)
                .DistinctBy(ClassNames.Key).Order(StringComparer.OrdinalIgnoreCase)]);
    }

    /// <summary>Those that a lesson was made with.</summary>
    public static PlanNumbers Kept(AcceptedNumbers? kept) => kept is null ? None : new(_ => kept, []);

    /// <summary>The numbers of a choice.</summary>
    /// <param name="choice">What a plan says: null for those of the school, <see cref="File"/>, or a class.</param>
    public AcceptedNumbers? Of(string? choice) => choice == File ? null : inForce(
        choice?.StartsWith(ClassPrefix, StringComparison.Ordinal) == true ? choice[ClassPrefix.Length..] : "");

    /// <summary>The numbers for a lesson of a class: its own where the plan does not say otherwise.</summary>
    public AcceptedNumbers? OfLesson(string? choice, string className) => choice is null ? inForce(className) : Of(choice);
}
