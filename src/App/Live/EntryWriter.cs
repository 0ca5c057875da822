using Calx.App.Serving;

namespace Calx.App.Live;

/// <summary>Who writes an entry, and what they may write.</summary>
/// <param name="Device">The name in the journal.</param>
/// <param name="Group">The only group that they write for, or null where they may write for all.</param>
/// <param name="IsTeacher">Whether they may write everything.</param>
public sealed record EntryWriter(string Device, int? Group, bool IsTeacher)
{
    /// <summary>The teacher.</summary>
    public static EntryWriter Teacher { get; } = new(Visitor.TeachersDevice, null, true);

    /// <summary>A device in its seat.</summary>
    public static EntryWriter Of(Seat seat) => new(seat.Device, seat.Role == SeatRole.Station ? null : seat.Group, false);

    /// <summary>Why they may not write something, or null.</summary>
    public string? Refusal(int group, int member, string? kind, string what)
    {
        if (IsTeacher)
        {
            return null;
        }

        return Group is int own && group != own ? $"This was typed for group {group}, and this device types for group {own}."
            : group == 0 || member > 0 ? "That is the teacher's to write."
            : kind == "happening" && !Acts.OfGroups.Contains(what) ? "That is the teacher's to write."
            : null;
    }
}
