using Calx.App.Live;
using Calx.App.Serving;
using Calx.Measurement.Numbers;
using Calx.Records.Storage;

namespace Calx.App.Pages.Answers;

/// <summary>Puts together what a student's page of answers shows. Only the student of the device's seat is looked at.</summary>
public sealed class AnswersDesk(RecordStore store, AnswerFeedback feedback)
{
    /// <summary>Who is in the class.</summary>
    public async Task<ClassRoll> Roll(LessonView view, CancellationToken cancellation) =>
        new(view, await store.Members(view.Room.Lesson.ClassId, cancellation));

    /// <summary>The student's page, or null where the device answers for nobody (any more): then somebody has to be chosen.</summary>
    public async Task<AnswersModel?> Page(LessonView view, Seat seat, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(seat);
        ClassRoll roll = await Roll(view, cancellation);
        AnswersFor devices = AnswersFor.Of(view, seat.Member);
        if (seat.Member < 1 || !roll.MayChoose(seat, seat.Member) || !devices.Has(seat.Device))
        {
            return null;
        }

        IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> readings = StudentReadings.Of(view, roll, seat.Member);
        MarkingSettings settings = MarkingSettings.Of(view);
        IReadOnlyList<AskedOfStudent> asked = AskedOfStudent.All(view, seat.Device, seat.Member);
        return new AnswersModel(view, seat, roll.NameOf(seat.Member), asked)
        {
            Readings = OwnReadings.Of(view.Practical, readings),
            Points = OwnReadings.PointsOf(view.Practical, StudentReadings.SeriesOf(view, roll, seat.Member)),
            OnReadings = OnReadings(view, roll, seat.Member, readings),
            Current = asked.FirstOrDefault(a => a.Cell is null)?.Question.Id ?? AnswersModel.All,
            Settings = settings,
            Answering = Answering.Of(view),
            Word = devices.Word ?? "",
            Feedback = await feedback.Of(view, seat.Member, settings, cancellation),
        };
    }

    private static string? OnReadings(
        LessonView view, ClassRoll roll, int member, IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> readings)
    {
        int group = roll.GroupOf(member);
        if (roll.HasPack(member))
        {
            return "These are simulated, from your catch-up pack."
                + (new WorkWords(view.Practical) is { Repeats: true } work ? $" If you decided to {work.AgainVerb}, work with the last weighing on your sheet." : "");
        }

        if (group == 0)
        {
            return "You are in no group yet, so there are no readings to work with. Tell your teacher.";
        }

        GroupState state = view.State.Group(group);
        IReadOnlyList<string> missing = OwnReadings.Missing(view, readings);
        string? whose = state.JoinedGroup is int other ? FormattableString.Invariant($"You work with the readings of group {other}.") : state.IsSimulated ? "These are simulated." : null;
        string? lacks = readings.Count == 0 ? "Your group’s table has no readings yet."
            : missing.Count == 0 ? null : $"Your group’s table has no {string.Join(" and no ", missing)} yet.";
        return whose is null && lacks is null ? null : string.Join(' ', new[] { whose, lacks }.OfType<string>());
    }
}
