using Calx.App.Live;

namespace Calx.App.Pages.Students;

/// <summary>The page on which a device takes a group.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Own">The group that the device has, or 0.</param>
/// <param name="IsOpen">Whether the teacher has opened the practical.</param>
/// <param name="IsBound">Whether it has typed something for its group and stays there.</param>
/// <param name="Fault">What was wrong, or null.</param>
public sealed record GroupsModel(LessonView View, int Own, bool IsOpen, bool IsBound, string? Fault);
