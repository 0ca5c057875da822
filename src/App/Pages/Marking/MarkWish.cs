using System.Globalization;
using Calx.Records.Journal;

namespace Calx.App.Pages.Marking;

/// <summary>Marks that the teacher gives on a page.</summary>
/// <param name="Id">Id of the entry that it becomes; the form had it from the start, so that a double click is one entry.</param>
/// <param name="Marks">The marks as sent.</param>
/// <param name="Words">Reason or comment.</param>
/// <param name="Seen">Id of the answer's entry that the page showed, or empty for nothing answered.</param>
/// <param name="Was">Id of the mark's entry that the page showed, or empty for none.</param>
public sealed record MarkWish(string Id, string Marks, string Words, string Seen, string Was)
{
    /// <summary>Reads a form.</summary>
    public static MarkWish Of(FormFields form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new(form["id"], form["marks"], form["reason"], form["seen"], form["was"]);
    }

    /// <summary>The id, or null.</summary>
    public EntryId? EntryId => Records.Journal.EntryId.TryParse(Id, out EntryId id) ? id : null;

    /// <summary>The entry that it replaces, or null.</summary>
    public EntryId? Replaced => Records.Journal.EntryId.TryParse(Was, out EntryId id) ? id : null;

    /// <summary>The marks, or null where they are no whole number from 0 to what there are.</summary>
    public int? MarksOf(int most) => int.TryParse(Marks, NumberStyles.None, CultureInfo.InvariantCulture, out int marks) && marks <= most ? marks : null;
}
