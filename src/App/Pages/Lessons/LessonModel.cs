using Calx.App.Learning;
using Calx.App.Live;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>A lesson to prepare, begin and end.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Class">Its class.</param>
/// <param name="Members">The class, by number.</param>
/// <param name="Door">The door that was opened last, or null.</param>
/// <param name="Signed">The safety check of its plan, or null.</param>
/// <param name="Said">What was done or is wrong.</param>
public sealed record LessonModel(
    LessonView View, SchoolClass Class, IReadOnlyList<Member> Members, LessonDoor? Door, Signature? Signed, PageSaid Said)
{
    /// <summary>Accepted numbers that its plan does not have yet and may take, or null.</summary>
    public AcceptedNumbers? Newer { get; init; }

    /// <summary>The lesson.</summary>
    public Lesson Lesson => View.Room.Lesson;

    /// <summary>Whether its codes let devices in.</summary>
    public bool DoorIsOpen => Door is { IsOpen: true } && !View.State.IsOver;

    /// <summary>The code of a balance station in fours, while it lets one in; else null.</summary>
    public string? Station => DoorIsOpen ? $"{Door!.StationCode[..4]} {Door.StationCode[4..]}" : null;

    /// <summary>Whether students see the practical: signed for, or the teacher's own trial run.</summary>
    public bool IsSafe => Lesson.Settings.Trial || Signed is not null || View.State.IsCover;

    /// <summary>What is known of a member today.</summary>
    public MemberState Of(Member member) => View.State.Members.TryGetValue(member.Number, out MemberState? state) ? state : MemberState.Unknown;

    /// <summary>Where the lesson stands, in a sentence.</summary>
    public string State => View.State switch
    {
        { IsOver: true } => "This lesson is over. Its findings are ready.",
        { BeganAt: DateTimeOffset began } => $"It began at {began.LocalDateTime.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)}.",
        _ when DoorIsOpen => "The door is open; the clock has not started.",
        _ => "Not begun.",
    };
}
