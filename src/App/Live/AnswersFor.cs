using System.Security.Cryptography;
using Calx.App.Pages.Students;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// Which devices answer for a student. The first device has a word drawn that it shows; another one has to give that word. So nobody
/// reads a neighbour's answers and marks, or writes over them, by tapping the neighbour's name.
/// </summary>
public sealed class AnswersFor
{
    private const string Letters = "BCDFGHJKLMNPQRSTVWXZ";
    private const int Length = 4;

    private readonly JournalCell cell;
    private readonly KeptEntry[] claims;

    private AnswersFor(JournalCell cell, KeptEntry[] claims) => (this.cell, this.claims) = (cell, claims);

    /// <summary>Those of a student.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="member">The number in the class.</param>
    public static AnswersFor Of(LessonView view, int member)
    {
        ArgumentNullException.ThrowIfNull(view);
        var cell = new JournalCell(0, 1, Acts.AnswersFor, member);
        return new AnswersFor(cell, [.. view.Table.FirstOrDefault(c => c.Cell == cell)?.History ?? []]);
    }

    /// <summary>The student's word, or null while no device has answered for the student.</summary>
    public string? Word => (claims.FirstOrDefault()?.Entry.Content as EntryContent.Happening)?.Text;

    /// <summary>Whether a device answers for the student.</summary>
    public bool Has(string device) => claims.Any(c => c.Entry.Device == device);

    /// <summary>Whether a word is the student's; small letters, blanks and look-alikes are forgiven.</summary>
    public bool IsWord(string typed) => Word is string word && JoinCode.Of(typed) == word;

    /// <summary>The entry by which a device answers for the student from now on.</summary>
    public JournalEntry Entry(string device, DateTimeOffset at) => new(
        NewEntryId.Draw(), cell, new EntryContent.Happening(Word ?? RandomNumberGenerator.GetString(Letters, Length)), device, at);
}
