using Calx.App.Live;

namespace Calx.App.Pages.Live;

/// <summary>All readings of a lesson, to type in.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Fault">What was not taken, or null.</param>
public sealed record GridModel(LessonView View, string? Fault);
