namespace Calx.Practicals.Definition;

/// <summary>What holds of the lesson besides its steps.</summary>
public sealed class ClassroomDefinition(
    double gasOffInMinutes, double lateShare, StepMinutes lateBy, StepMinutes newStart, Provenance provenance, FilePosition at)
{
    /// <summary>The lesson of a practical whose file says nothing of it: no flame, one group in ten late (judgement).</summary>
    public static ClassroomDefinition Usual { get; } =
        new(0, 0.1, new StepMinutes(1, 4, 10), new StepMinutes(1, 2, 4), new Provenance(Standing.Judgement, null), new FilePosition(1, 1));

    /// <summary>Minutes before the bell by which every flame is out, from 0.</summary>
    public double GasOffInMinutes { get; } = gasOffInMinutes;

    /// <summary>Share of the groups that start late, 0 to 1.</summary>
    public double LateShare { get; } = lateShare;

    /// <summary>By how much they are late.</summary>
    public StepMinutes LateBy { get; } = lateBy;

    /// <summary>How long a group takes to fetch a spare when its vessel breaks.</summary>
    public StepMinutes NewStart { get; } = newStart;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
