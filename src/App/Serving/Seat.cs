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

    /// <summary>As it is kept in the device's cookie, before it is sealed.</summary>
    public string Text => FormattableString.Invariant($"{Lesson}{Divider}{(int)Role}{Divider}{Group}{Divider}{Device}");

    /// <summary>Reads what <see cref="Text"/> wrote; null for anything else.</summary>
    public static Seat? Of(string text)
    {
        string[] parts = text.Split(Divider);
        return parts.Length == 4 && RecordId.TryParse(parts[0], out RecordId lesson) && int.TryParse(parts[1], out int role)
            && Enum.IsDefined((SeatRole)role) && int.TryParse(parts[2], out int group)
            ? new Seat(lesson, (SeatRole)role, group, parts[3]) : null;
    }
}
