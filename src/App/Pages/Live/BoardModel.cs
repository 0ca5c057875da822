using Calx.App.Live;

namespace Calx.App.Pages.Live;

/// <summary>The live view of a lesson.</summary>
/// <param name="View">The lesson.</param>
/// <param name="ClassName">The class's name.</param>
/// <param name="Now">The time.</param>
/// <param name="Tiles">A tile a group, what needs the teacher first.</param>
/// <param name="Forecast">What the clock says, a sentence each.</param>
public sealed record BoardModel(
    LessonView View, string ClassName, DateTimeOffset Now, IReadOnlyList<GroupTile> Tiles, IReadOnlyList<string> Forecast)
{
    /// <summary>Whether any group has begun: a device that takes a seat is not at work yet.</summary>
    public bool HasGroupsAtWork => View.Entries.Any(e =>
        e.Entry.Cell.Group > 0 && e.Entry.Cell.What is not (Acts.DeviceIn or Acts.DeviceOut or Acts.DevicesFreed));
}
