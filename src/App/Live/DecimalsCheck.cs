using System.Globalization;
using Calx.App.Pages.Students;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>Whether a reading has the decimals that its balance shows. It is kept either way, once the person has said so.</summary>
public static class DecimalsCheck
{
    /// <summary>Decimals of a balance by its letter; without one, those that all balances of the lesson share; null where that is not
    /// known, or where no balance shows the reading.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="balances">Its balances.</param>
    /// <param name="what">Id of the reading.</param>
    /// <param name="letter">Letter of the balance, or null.</param>
    public static int? DecimalsOf(LessonView view, IReadOnlyList<BalanceChoice> balances, string what, string? letter)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(balances);
        bool isWeighing = view.Practical.Series?.IsPoint(what) == true || view.Weighings.Any(w => w.Id == what && w.Reading is ReadingDefinition { Gauge: null });
        int[] decimals = [.. balances.Where(b => letter is null || string.Equals(b.Letter, letter, StringComparison.OrdinalIgnoreCase)).Select(b => b.Decimals).Distinct()];
        return isWeighing && decimals.Length == 1 ? decimals[0] : null;
    }

    /// <summary>What the number would be with the zeros that the display shows; itself where it has too many decimals.</summary>
    public static WrittenNumber Whole(WrittenNumber written, int decimals) => written.Decimals < decimals
        // Adding a zero with the display's decimals writes the zeros that the display shows.
        ? new WrittenNumber(written.Value + new decimal(0, 0, 0, isNegative: false, (byte)decimals)) : written;

    /// <summary>What the teacher is asked, or null.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="balances">Its balances.</param>
    /// <param name="entry">What was typed.</param>
    public static string? Ask(LessonView view, IReadOnlyList<BalanceChoice> balances, JournalEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (entry.Content is not EntryContent.Reading reading
            || DecimalsOf(view, balances, entry.Cell.What, reading.Balance) is not int decimals || decimals == reading.Written.Decimals)
        {
            return null;
        }

        string shows = $"{(reading.Balance is null ? "The balance" : $"Balance {reading.Balance}")} shows {DecimalsInWords.Of(decimals)}";
        string meant = reading.Written.Decimals < decimals ? $"{shows}: {Whole(reading.Written, decimals)}?" : $"{shows}.";
        return string.Create(CultureInfo.InvariantCulture, $"{meant} Put it right, or press once more and {reading.Written} is kept as written.");
    }
}
