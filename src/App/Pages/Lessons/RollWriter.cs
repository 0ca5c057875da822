using System.Globalization;
using System.Security.Cryptography;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>Writes who is here and who is in which group into a lesson's journal, as the teacher.</summary>
public sealed class RollWriter(LessonRoom room, TimeProvider clock)
{
    /// <summary>Says that a member is present, late or away.</summary>
    public Task Presence(int member, string presence, CancellationToken cancellation) => Write(member, Acts.Presence, presence, cancellation);

    /// <summary>Puts a member into a group; 0 takes them out.</summary>
    public Task Group(int member, int group, CancellationToken cancellation) =>
        Write(member, Acts.SeatOf, group.ToString(CultureInfo.InvariantCulture), cancellation);

    /// <summary>Spreads those who are not away evenly over the groups, in the order given; the others lose theirs.</summary>
    /// <param name="model">The lesson.</param>
    /// <param name="way"><c>in-order</c>, <c>drawn</c> or <c>none</c>.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task Spread(LessonModel model, string way, CancellationToken cancellation)
    {
        Member[] here = [.. model.Members.Where(m => way != "none" && model.Of(m).Presence != MemberState.Away)];
        if (way == "drawn")
        {
            RandomNumberGenerator.Shuffle(here.AsSpan());
        }

        Dictionary<int, int> seats = Seats(here, model.View.GroupCount);
        var writes = new List<Task>();
        foreach (Member member in model.Members)
        {
            int group = seats.GetValueOrDefault(member.Number);
            if (group != model.Of(member).Group)
            {
                writes.Add(Group(member.Number, group, cancellation));
            }
        }

        await Task.WhenAll(writes);
    }

    /// <summary>Neighbours share a group; sizes differ by one at most, and no more groups are used than make pairs.</summary>
    private static Dictionary<int, int> Seats(Member[] here, int groups)
    {
        int used = Math.Min(groups, Math.Max(1, here.Length / 2));
        return here.Select((m, i) => (m.Number, Group: (int)((long)i * used / here.Length) + 1)).ToDictionary(s => s.Number, s => s.Group);
    }

    private Task<AppendResult> Write(int member, string what, string text, CancellationToken cancellation)
    {
        return room.Append(
            new JournalEntry(NewEntryId.Draw(), new JournalCell(0, 1, what, member), new EntryContent.Happening(text), Visitor.TeachersDevice, clock.GetUtcNow()), cancellation);
    }
}
