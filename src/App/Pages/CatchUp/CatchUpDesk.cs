using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.App.Serving;
using Calx.Chemistry.Elements;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Model.Simulation;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.CatchUp;

/// <summary>Catch-up packs of a lesson: made once for those who were away, and from then on in its journal.</summary>
public static class CatchUpDesk
{
    /// <summary>Shares of odd cases to choose from, in per cent.</summary>
    public static IReadOnlyList<int> OddShares { get; } = [0, 20, 40, 60, 100];

    /// <summary>The packs that the lesson keeps, by number in the class.</summary>
    public static IReadOnlyList<CatchUpPack> Kept(LessonModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        LessonRoom room = model.View.Room;
        var working = new Lazy<PackWorking>(() => new PackWorking(room.Plan, AtomicWeights.Iupac2024));
        return
        [
            .. Entries(model.View).OrderBy(e => e.Member).Select(e => KeptPackText.Read(
                e.Text, CatchUpStudent.Numbered(e.Member, model.Members.FirstOrDefault(m => m.Number == e.Member)?.Name ?? ""), room.Practical, working.Value))
                .OfType<CatchUpPack>(),
        ];
    }

    /// <summary>Members who were away and have no pack yet.</summary>
    public static IReadOnlyList<Member> Waiting(LessonModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        HashSet<int> have = [.. Entries(model.View).Select(e => e.Member)];
        return [.. model.Members.Where(m => model.Of(m).Presence == MemberState.Away && !have.Contains(m.Number))];
    }

    /// <summary>Makes packs for those who were away and have none, and keeps them in the journal.</summary>
    public static async Task<IResult> Make(LessonRoom room, HttpContext context, LessonDesk desk, TimeProvider clock)
    {
        FormFields form = await FormFields.Of(context);
        string papers = $"/lessons/{room.Lesson.Id}/papers";
        if (!int.TryParse(form["odd"], NumberStyles.None, CultureInfo.InvariantCulture, out int odd) || !OddShares.Contains(odd))
        {
            return Show.See(Changes.Saying($"{papers}#catch-up", "fault", $"'{form.Short("odd", 20)}' is no share of odd cases: {string.Join(", ", OddShares)} % are expected."));
        }

        LessonModel model = await desk.Model(room, new PageSaid(null, null), context.RequestAborted);
        IReadOnlyList<Member> waiting = Waiting(model);
        try
        {
            IReadOnlyList<CatchUpPack> packs = waiting.Count == 0 ? [] : await Task.Run(() => CatchUpPacks.Of(
                room.Plan,
                AtomicWeights.Iupac2024,
                [.. waiting.Select(m => CatchUpStudent.Numbered(m.Number, m.Name))],
                new CatchUpOptions(SeedOf(room.Lesson), odd / 100.0, cancellation: context.RequestAborted),
                Kept(model)));
            DateTimeOffset now = clock.GetUtcNow();
            JournalEntry[] entries = [.. packs.Zip(waiting, (pack, member) => Entry(room.Lesson, member.Number, KeptPackText.Of(pack), now))];
            if (entries.Length > 0 && await room.Append(entries, context.RequestAborted) is AppendResult.Refused refused)
            {
                return Show.See(Changes.Saying($"{papers}#catch-up", "fault", refused.Reason));
            }
        }
        catch (CannotSimulateException fault)
        {
            return Show.See(Changes.Saying($"{papers}#catch-up", "fault", $"No data can be drawn: {fault.Message}."));
        }

        return Show.See($"{papers}#catch-up");
    }

    /// <summary>The packs as the journal has them, by number in the class.</summary>
    internal static IEnumerable<(int Member, string Text)> Entries(LessonView view) => view.Entries
        .Where(e => e.Entry.Cell is { What: Acts.CatchUp, Member: > 0 } && e.Entry.Content is EntryContent.Happening)
        .Select(e => (e.Entry.Cell.Member, ((EntryContent.Happening)e.Entry.Content).Text))
        // What was handed out first is what was handed out.
        .DistinctBy(e => e.Member);

    /// <summary>One id a member: a form that is sent twice gives one pack.</summary>
    private static JournalEntry Entry(Lesson lesson, int member, string text, DateTimeOffset at)
    {
        byte[] hash = SHA256.HashData(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{lesson.Id} {Acts.CatchUp} {member}")));
        return new JournalEntry(
            EntryId.Of(BinaryPrimitives.ReadUInt128BigEndian(hash)), new JournalCell(0, 1, Acts.CatchUp, member), new EntryContent.Happening(text), Visitor.TeachersDevice, at);
    }

    private static ulong SeedOf(Lesson lesson) => BinaryPrimitives.ReadUInt64BigEndian(SHA256.HashData(Encoding.ASCII.GetBytes($"{lesson.Id} {Acts.CatchUp}")));
}
