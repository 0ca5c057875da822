using Calx.App.Live;

namespace Calx.App.Pages.Marking;

/// <summary>How a lesson is marked, to be changed.</summary>
/// <param name="Marking">The lesson's answers.</param>
/// <param name="Settings">What is set, or what was sent and could not be kept.</param>
public sealed record SettingsModel(MarkingModel Marking, MarkingSettings Settings);
