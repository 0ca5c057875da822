using Calx.App.Live;
using Calx.Papers.Charts;

namespace Calx.App.Pages.Live;

/// <summary>What the class sees on the wall: never causes, odd results or typed text.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Now">The time.</param>
/// <param name="Chart">The class's values as they come in.</param>
/// <param name="Facts">What the engine says, or said a moment ago.</param>
/// <param name="Names">Names by number, empty unless the teacher shows them.</param>
public sealed record ProjectorModel(
    LessonView View, DateTimeOffset Now, Chart Chart, WallFacts Facts, IReadOnlyDictionary<int, string> Names);
