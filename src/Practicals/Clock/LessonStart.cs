namespace Calx.Practicals.Clock;

/// <summary>Where a lesson is from which on it is run. One belongs to one thread and is filled anew for each run.</summary>
internal sealed class LessonStart(int groups)
{
    /// <summary>The minute.</summary>
    public double Minute { get; set; }

    /// <summary>When the class is, or was, through with what it does together at first.</summary>
    public double OpeningEnd { get; set; }

    /// <summary>When the last flame so far was put out; 0 where none has.</summary>
    public double FlameOut { get; set; }

    /// <summary>Each group.</summary>
    public GroupStart[] Groups { get; } = [.. Enumerable.Range(0, groups).Select(_ => new GroupStart())];

    /// <summary>All groups, those first who hold shared things, then those who wait for them, in their order.</summary>
    public int[] Order { get; } = [.. Enumerable.Range(0, groups)];
}
