using Calx.App.Live;

namespace Calx.App.Pages.Live;

/// <summary>The teacher's page of one group.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Now">The time.</param>
/// <param name="Tile">What the live view shows of it.</param>
/// <param name="Group">What the engine says.</param>
/// <param name="Fault">What was not taken, or null.</param>
public sealed record GroupPageModel(LessonView View, DateTimeOffset Now, GroupTile Tile, GroupFacts Group, string? Fault);
