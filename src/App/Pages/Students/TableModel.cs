using Calx.App.Live;
using Calx.App.Serving;

namespace Calx.App.Pages.Students;

/// <summary>What a device at the table, or a balance station, shows.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Seat">The device's seat.</param>
/// <param name="Tables">Its group; at a station every group.</param>
/// <param name="Balances">The balances to choose from.</param>
public sealed record TableModel(LessonView View, Seat Seat, IReadOnlyList<GroupTable> Tables, IReadOnlyList<BalanceChoice> Balances)
{
    /// <summary>The group that a station has chosen in the address, or 0.</summary>
    public int Chosen { get; init; }

    /// <summary>What the practical's work is called.</summary>
    public WorkWords Work { get; } = new(View.Practical);

    /// <summary>What was not taken, or null.</summary>
    public string? Fault { get; init; }

    /// <summary>A reading to be asked about, or null.</summary>
    public TypedReading? Typed { get; init; }

    /// <summary>A reading that was kept and is asked about, or null.</summary>
    public AskedReading? Asked { get; init; }

    /// <summary>Whether the page is that of a balance station.</summary>
    public bool IsStation => Seat.Role == SeatRole.Station;

    /// <summary>Whether the lesson is assessed.</summary>
    public bool IsAssessed => View.Room.Lesson.Settings.Assessed;

    /// <summary>Ids of what this device sent that has been kept, the last fifty: the page then stops showing it as waiting.</summary>
    public string Kept => string.Join(' ', View.Entries.Where(e => e.Entry.Device == Seat.Device).TakeLast(50).Select(e => e.Entry.Id));
}
