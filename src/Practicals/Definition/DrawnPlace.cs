namespace Calx.Practicals.Definition;

/// <summary>Where a part of a drawing is, seen from the one it is told with.</summary>
public enum DrawnPlace
{
    /// <summary>It stands on it.</summary>
    On,

    /// <summary>It is inside, as its contents.</summary>
    In,

    /// <summary>It is beneath its top, on what it stands on (under a clamp: on the base of the stand).</summary>
    Under,

    /// <summary>It is held by its jaws.</summary>
    Holds,

    /// <summary>It is joined to it by leads or tubing; leads join several, from left to right.</summary>
    Joins,

    /// <summary>It stands beside it, to the right, on the same surface.</summary>
    Beside,
}
