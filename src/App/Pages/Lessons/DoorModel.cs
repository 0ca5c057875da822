using Calx.App.Live;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>How devices come into a lesson, to be projected.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Door">The open door.</param>
/// <param name="Join">Addresses under which the room reaches the page to join, the likeliest first; empty where only this machine does.</param>
/// <param name="IsSafe">Whether the safety check of its plan is signed.</param>
public sealed record DoorModel(LessonView View, LessonDoor Door, IReadOnlyList<string> Join, bool IsSafe)
{
    /// <summary>The code in threes, to be read aloud.</summary>
    public string Code => $"{Door.Code[..3]} {Door.Code[3..]}";
}
