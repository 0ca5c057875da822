namespace Calx.Practicals.Watching;

/// <summary>A moment of a lesson. All minutes count from the lesson's first bell.</summary>
public sealed record LessonMoment
{
    /// <summary>Takes the moment.</summary>
    /// <param name="now">The minute it is.</param>
    /// <param name="bell">The minute of the last bell as it stands now; a bell can move.</param>
    /// <param name="workBegan">When the class was through with what it does together at first, or null where nobody said.</param>
    /// <param name="lastHeatingStartsBy">After this minute nobody is told to heat again; null where no call is made.</param>
    /// <exception cref="ArgumentException">A minute is not finite.</exception>
    public LessonMoment(double now, double bell, double? workBegan = null, double? lastHeatingStartsBy = null)
    {
        Now = Minutes.Finite(now, nameof(now));
        Bell = Minutes.Finite(bell, nameof(bell));
        WorkBegan = Minutes.Finite(workBegan, nameof(workBegan));
        LastHeatingStartsBy = Minutes.Finite(lastHeatingStartsBy, nameof(lastHeatingStartsBy));
    }

    /// <summary>The minute it is.</summary>
    public double Now { get; }

    /// <summary>The minute of the last bell.</summary>
    public double Bell { get; }

    /// <summary>When the groups' own work began, or null.</summary>
    public double? WorkBegan { get; }

    /// <summary>After this minute nobody is told to heat again, or null.</summary>
    public double? LastHeatingStartsBy { get; }
}
