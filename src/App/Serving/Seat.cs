using Calx.Records;

namespace Calx.App.Serving;

/// <summary>A device's place in a lesson.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Group">The group's number, or 0.</param>
/// <param name="Device">The device's name in the journal, drawn when it joined.</param>
public sealed record Seat(RecordId Lesson, SeatRole Role, int Group, string Device)
{
    private const char Divider = '|';

    /// <summary>The student who answers on it now, by number in the class, or 0.</summary>
    public int Member { get; init; }

    /// <summary>As it is kept in the device's cookie, before it is sealed.</summary>
    public string Text => FormattableString.Invariant($"{Lesson}{Divider}{(int)Role}{Divider}{Group}{Divider}{Device}{Divider}{Member}");

    /// <summary>Reads what <see cref="Text"/> wrote; null for anything else.</summary>
    public static Seat? Of(string text)
    {
        string[] parts = text.Split(Divider);
        // Without a student: sealed by an earlier version of the program.
        return parts.Length is 4 or 5 && RecordId.TryParse(parts[0], out RecordId lesson) && int.TryParse(parts[1], out int role)
            && Enum.IsDefined((SeatRole)role) && int.TryParse(parts[2], out int group)
            ? new Seat(lesson, (SeatRole)role, group, parts[3]) { Member = parts.Length > 4 && int.TryParse(parts[4], out int member) ? member : 0 } : null;
    }
}
