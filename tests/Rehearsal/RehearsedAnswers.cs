using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Measurement.Numbers;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Storage;

namespace Calx.Rehearsal;

/// <summary>
/// Readings and answers of a rehearsed lesson of magnesium: groups of two by number in the class, each student with a slip of their own
/// or none, and answers in words. All of it is invented.
/// </summary>
public static class RehearsedAnswers
{
    private static readonly string[] Conserved =
    [
        "Nothing was made. The mass of magnesium and the mass of the oxygen used together are the mass of the oxide, so mass is conserved.",
        "It weighs more because of human error, the readings were not very accurate.",
        "The oxygen comes from the air and it has a weight too, so it is heavier after.",
        "The oxide has more mass, as the magnesium grew when it burnt.",
    ];

    private static readonly string[] Better =
    [
        "Use more magnesium. The uncertainty of each reading is then a smaller share of the mass.",
        "Repeat it to make it more reliable and take the average.",
        "A balance with more decimals.",
    ];

    /// <summary>Writes them into the records of a data folder, which must not be serving yet.</summary>
    /// <param name="dataFolder">The folder.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="members">How many students answer, by number in the class.</param>
    public static async Task Write(string dataFolder, RecordId lesson, int members)
    {
        await using RecordStore store = await RehearsedLesson.Open(dataFolder);
        for (int group = 1; group <= (members + 1) / 2; group++)
        {
            foreach ((string what, decimal mass) in Readings(group))
            {
                await Append(store, lesson, new JournalCell(group, 1, what), new EntryContent.Reading(Written(mass), "g", group % 2 == 0 ? "B" : "A", null));
            }
        }

        for (int member = 1; member <= members; member++)
        {
            int group = (member + 1) / 2;
            await Append(store, lesson, new JournalCell(0, 1, Acts.SeatOf, member), new EntryContent.Happening(group.ToString(CultureInfo.InvariantCulture)));
            foreach ((string id, string text, string? unit) in Answers(member, group))
            {
                await Append(store, lesson, new JournalCell(0, 1, Acts.AnswerPrefix + id, member), new EntryContent.Answer(text, unit));
            }
        }
    }

    private static IEnumerable<(string What, decimal Mass)> Readings(int group)
    {
        decimal empty = 23.50m + (0.37m * group), magnesium = Magnesium(group), oxygen = Oxygen(group);
        return [("empty", empty), ("before", empty + magnesium), ("after", empty + magnesium + oxygen - 0.01m), ("after2", empty + magnesium + oxygen)];
    }

    private static decimal Magnesium(int group) => 0.20m + (0.01m * (group % 8));

    private static decimal Oxygen(int group) => Math.Round(Magnesium(group) * 0.64m, 2) - (group % 3 == 0 ? 0.02m : 0);

    private static IEnumerable<(string Id, string Text, string? Unit)> Answers(int member, int group)
    {
        double magnesium = (double)Magnesium(group), oxygen = (double)Oxygen(group);
        double wrongOxygen = member % 8 == 3 ? oxygen + 0.1 : oxygen;
        double moles = magnesium / (member % 8 == 4 ? 12.0 : 24.3), molesOxygen = wrongOxygen / (member % 8 is 5 or 6 ? 32.0 : 16.0);
        double ratio = member % 8 == 2 ? molesOxygen / moles : moles / molesOxygen;
        yield return ("massMagnesium", member % 8 == 1 ? Text((double)Readings(group).ElementAt(1).Mass, "F2") : Text(magnesium, "F2"), "g");
        yield return ("massOxygen", member % 8 == 7 ? "it got heavier by a bit" : Text(wrongOxygen, "F2"), member % 8 == 7 ? null : "g");
        yield return ("molesMagnesium", Text(moles, "F5"), "mol");
        yield return ("molesOxygen", Text(molesOxygen, "F5"), "mol");
        if (member % 5 != 0)
        {
            yield return ("ratio", Text(ratio, "F2"), null);
        }

        yield return ("conserved", Conserved[member % Conserved.Length], null);
        if (member % 3 != 0)
        {
            yield return ("better", Better[member % Better.Length], null);
        }
    }

    private static WrittenNumber Written(decimal mass) => WrittenNumber.TryParse(mass.ToString("F2", CultureInfo.InvariantCulture), out WrittenNumber written)
        ? written : throw new ArgumentException("A mass is written with two decimals.", nameof(mass));

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static async Task Append(RecordStore store, RecordId lesson, JournalCell cell, EntryContent content) =>
        await store.Append(lesson, new JournalEntry(NewEntryId.Draw(), cell, content, Visitor.TeachersDevice, DateTimeOffset.UtcNow));
}
