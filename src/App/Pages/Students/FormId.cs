using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;

namespace Calx.App.Pages.Students;

/// <summary>
/// The id of the entry that a form will make. It is the same each time the page is shown until the group's journal has grown,
/// so that a part that has not changed is the same text, and a form that is sent twice is one entry.
/// </summary>
public static class FormId
{
    /// <summary>32 hexadecimal digits.</summary>
    /// <param name="seat">The device.</param>
    /// <param name="table">The group.</param>
    /// <param name="form">What the form is for.</param>
    public static string Of(Seat seat, GroupTable table, string form) => FormEntryId.Of(
        seat.Lesson, table.Mark, string.Create(CultureInfo.InvariantCulture, $"{seat.Device} {table.Number} {table.State.Trial} {form}"));
}
