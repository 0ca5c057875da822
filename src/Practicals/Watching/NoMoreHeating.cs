namespace Calx.Practicals.Watching;

/// <summary>Why nobody is told to heat again though it would be worth the minutes.</summary>
public enum NoMoreHeating
{
    /// <summary>'Last heating starts by' has passed.</summary>
    NoTime,

    /// <summary>The practical plans no further heating.</summary>
    MostHeatings,

    /// <summary>The heating is for the teacher alone.</summary>
    TeacherOnly,
}
