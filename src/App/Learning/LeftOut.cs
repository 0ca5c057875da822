namespace Calx.App.Learning;

/// <summary>Why nothing is learned from a lesson.</summary>
public enum LeftOut
{
    /// <summary>The teacher's own trial run: no class works at a teacher's pace.</summary>
    TrialRun,

    /// <summary>A cover lesson: its readings are simulated.</summary>
    Cover,

    /// <summary>It has not begun, or still goes on.</summary>
    NotOver,

    /// <summary>It was kept by a program that knew other practicals.</summary>
    Unreadable,

    /// <summary>There are a hundred later ones.</summary>
    TooOld,
}
