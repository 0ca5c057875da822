namespace Calx.Practicals.Definition;

/// <summary>What the technician is told besides the kit.</summary>
public sealed class TechnicianDefinition
{
    internal TechnicianDefinition(double noticeInHours, IReadOnlyList<PreparationStep> prepare, IReadOnlyList<string> waste, IReadOnlyList<string> returns) =>
        (NoticeInHours, Prepare, Waste, Returns) = (noticeInHours, prepare, waste, returns);

    /// <summary>A practical that says nothing to the technician.</summary>
    public static TechnicianDefinition None { get; } = new(0, [], [], []);

    /// <summary>Hours of notice that the work needs; 0 where the file says nothing.</summary>
    public double NoticeInHours { get; }

    /// <summary>What is prepared before the lesson.</summary>
    public IReadOnlyList<PreparationStep> Prepare { get; }

    /// <summary>What becomes of what is left over.</summary>
    public IReadOnlyList<string> Waste { get; }

    /// <summary>What is looked at when the kit comes back.</summary>
    public IReadOnlyList<string> Returns { get; }
}
