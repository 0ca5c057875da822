using System.Globalization;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// Whether a lesson takes answers from students' devices. It does until it ends, unless the teacher says otherwise: they may be closed
/// earlier, or left open for homework. Once feedback with its marks is open nothing more is taken.
/// </summary>
/// <param name="IsOpen">Whether it does.</param>
/// <param name="ClosedAt">Until when what waited on a device is still taken; null while it is open, and where nothing more is.</param>
/// <param name="Why">Why it does not, as the beginning of a sentence; empty while it does.</param>
public sealed record Answering(bool IsOpen, DateTimeOffset? ClosedAt, string Why)
{
    /// <summary>The word that opens it, also beyond the lesson's end.</summary>
    public const string Open = "open";

    /// <summary>The word that closes it.</summary>
    public const string Closed = "closed";

    private static readonly JournalCell Cell = new(0, 1, Acts.Answering);

    /// <summary>That of a lesson.</summary>
    public static Answering Of(LessonView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (MarkingSettings.Of(view) is { Feedback: FeedbackTime.Later, IsOpened: true })
        {
            // When it was typed only the device says, and the marks are there to be read: no exception for what waited.
            return new Answering(false, null, "Your teacher has opened the marks, so answers are closed");
        }

        KeptEntry? said = view.Table.FirstOrDefault(c => c.Cell == Cell)?.Latest;
        return ((said?.Entry.Content as EntryContent.Happening)?.Text, view.State.EndedAt) switch
        {
            (Open, _) => new Answering(true, null, ""),
            (Closed, _) => new Answering(false, said!.ReceivedAt, $"Your teacher closed the answers at {Clock(said.ReceivedAt)}"),
            (_, DateTimeOffset ended) => new Answering(false, ended, $"Your teacher ended this lesson at {Clock(ended)}"),
            _ => new Answering(true, null, ""),
        };
    }

    /// <summary>The entry that opens answering, or closes it.</summary>
    public static JournalEntry Entry(EntryId id, bool opens, DateTimeOffset at) =>
        new(id, Cell, new EntryContent.Happening(opens ? Open : Closed), EntryWriter.Teacher.Device, at);

    /// <summary>Why an answer is not taken, or null.</summary>
    /// <param name="typedAt">When the device says that it was typed.</param>
    public string? Refusal(DateTimeOffset typedAt) => IsOpen || typedAt <= ClosedAt ? null
        : $"{Why}; what is typed after that is not taken. Tell your teacher, who can open answers again.";

    private static string Clock(DateTimeOffset at) => at.ToLocalTime().ToString("HH:mm", CultureInfo.InvariantCulture);
}
