using Calx.Records.Journal;

namespace Calx.App.Pages.Live;

/// <summary>What is said of the entries of a cell.</summary>
public static class CellWords
{
    /// <summary>Who typed what stands against each other.</summary>
    public static string Contest(CellState cell)
    {
        string[] devices = [.. cell.Rivals.Prepend(cell.Current).Select(k => k.Entry.Device).Distinct(StringComparer.Ordinal)];
        return devices.Length > 1
            ? "Several devices typed different readings here, and none replaced another."
            : $"{devices[0]} typed different readings here, one after the other, and none replaced another.";
    }

    /// <summary>What became of an entry: it counts, stands beside, or was replaced or set aside, and why.</summary>
    public static string Now(CellState cell, KeptEntry kept)
    {
        if (kept == cell.Current)
        {
            return kept.Entry.Reason is string why ? $"counts; a correction: {why}" : "counts";
        }

        return cell.ReplacerOf(kept) switch
        {
            { Entry: { Content: EntryContent.Reading by, Reason: string reason } } => $"replaced by {by.Written}: {reason}",
            { Entry.Reason: string reason } => $"set aside: {reason}",
            _ => cell.Rivals.Contains(kept) ? "beside it: not decided" : "the same once more",
        };
    }
}
