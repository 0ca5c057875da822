namespace Calx.App.Serving;

/// <summary>
/// Whom an address admits. Every address says it: one that does not admits nobody, so that a forgotten word closes a door
/// instead of opening it.
/// </summary>
public sealed class Admits
{
    private readonly string name;

    private Admits(string name) => this.name = name;

    /// <summary>Anybody who reaches the program: the page to join, files, errors.</summary>
    public static Admits Anybody { get; } = new("anybody");

    /// <summary>Any device that has joined a lesson, with or without a group.</summary>
    public static Admits Joined { get; } = new("a device that has joined");

    /// <summary>A device that types for a group: the group's own, or the station at a balance.</summary>
    public static Admits AtTheTable { get; } = new("a group's device or the balance station");

    /// <summary>The teacher.</summary>
    public static Admits Teacher { get; } = new("the teacher");

    /// <summary>Whether it lets a visitor in.</summary>
    public bool Lets(Visitor visitor) =>
        this == Anybody
        || (this == Teacher && visitor.IsTeacher)
        || (this == Joined && visitor.Seat is not null)
        || (this == AtTheTable && visitor.Seat is { Role: SeatRole.Group or SeatRole.Station });

    public override string ToString() => name;
}
