using Calx.App.Live;
using Calx.App.Serving;

namespace Calx.App.Pages.Answers;

/// <summary>The page on which a student answers.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Seat">The device.</param>
/// <param name="Name">The student's name where names are shown, or the number.</param>
/// <param name="Asked">The questions, with what was answered.</param>
public sealed record AnswersModel(LessonView View, Seat Seat, string Name, IReadOnlyList<AskedOfStudent> Asked)
{
    /// <summary>The page with all answers beside each other.</summary>
    public const string All = "all";

    /// <summary>The readings that the answers follow from, as written.</summary>
    public IReadOnlyList<OwnReading> Readings { get; init; } = [];

    /// <summary>The points of mass against time from which the curve is drawn; none where the practical takes none.</summary>
    public IReadOnlyList<OwnReading> Points { get; init; } = [];

    /// <summary>What is said of those readings or of what is missing among them, or null.</summary>
    public string? OnReadings { get; init; }

    /// <summary>Id of the question that is shown without a script, or <see cref="All"/>.</summary>
    public string Current { get; init; } = All;

    /// <summary>What was not taken, or null.</summary>
    public string? Fault { get; init; }

    /// <summary>What was typed and not taken, to be put right; null for nothing.</summary>
    public string? Typed { get; init; }

    /// <summary>How it is marked, and when students hear of it.</summary>
    public required MarkingSettings Settings { get; init; }

    /// <summary>Whether answers are taken.</summary>
    public required Answering Answering { get; init; }

    /// <summary>What is said of the answers, or null where that is not shown.</summary>
    public StudentFeedback? Feedback { get; init; }

    /// <summary>The student's word for another device.</summary>
    public string Word { get; init; } = "";

    /// <summary>How many are answered.</summary>
    public int Answered => Asked.Count(a => a.Cell is not null);

    /// <summary>Ids of what this device sent that has been kept, the last fifty: the page then stops showing it as waiting.</summary>
    public string Kept => string.Join(' ', View.Entries.Where(e => e.Entry.Device == Seat.Device).TakeLast(50).Select(e => e.Entry.Id));
}
