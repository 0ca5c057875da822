using System.Globalization;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What a lesson's happenings add up to.</summary>
public sealed class LessonState
{
    private readonly SortedDictionary<int, GroupState> groups = [];
    private readonly SortedDictionary<int, MemberState> members = [];

    private LessonState()
    {
    }

    /// <summary>When its clock started, or null.</summary>
    public DateTimeOffset? BeganAt { get; private set; }

    /// <summary>Since when it is a cover lesson, one without practical work in which every group has simulated readings; null where it is none.</summary>
    public DateTimeOffset? CoverSince { get; private set; }

    /// <summary>Whether it is a cover lesson.</summary>
    public bool IsCover => CoverSince is not null;

    /// <summary>When the groups' own work began, or null.</summary>
    public DateTimeOffset? WorkBeganAt { get; private set; }

    /// <summary>When the bell goes where it was moved, in minutes since the beginning, or null.</summary>
    public double? MovedBell { get; private set; }

    /// <summary>Whether everybody has been told to stop.</summary>
    public bool IsStopped { get; private set; }

    /// <summary>What the projector announces, or empty.</summary>
    public string Announcement { get; private set; } = "";

    /// <summary>Whether the accepted value is shown.</summary>
    public bool AcceptedShown { get; private set; }

    /// <summary>Whether names are shown on the projector.</summary>
    public bool NamesShown { get; private set; }

    /// <summary>When it was ended, or null while it has not been, or goes on after all.</summary>
    public DateTimeOffset? EndedAt { get; private set; }

    /// <summary>Whether it is over.</summary>
    public bool IsOver => EndedAt is not null;

    /// <summary>How many groups were added to those that were planned.</summary>
    public int AddedGroups { get; private set; }

    /// <summary>Place in the journal of the last entry that is in this.</summary>
    public long Number { get; private set; }

    /// <summary>What is known of each student, by number in the class.</summary>
    public IReadOnlyDictionary<int, MemberState> Members => members;

    /// <summary>What is known of a group; a group of which nothing is known yet has a state too.</summary>
    public GroupState Group(int number) => groups.GetValueOrDefault(number) ?? new GroupState(IsCover);

    /// <summary>Students of a group that are here, by number in the class.</summary>
    public IEnumerable<int> MembersOf(int group) =>
        members.Where(m => m.Value.Group == group && m.Value.Presence != MemberState.Away).Select(m => m.Key);

    /// <summary>Adds up a journal.</summary>
    public static LessonState Of(LessonJournal journal)
    {
        var state = new LessonState();
        foreach (KeptEntry kept in journal.Entries)
        {
            state.Take(kept);
        }

        return state;
    }

    private void Take(KeptEntry kept)
    {
        Number = kept.Number;
        JournalCell cell = kept.Entry.Cell;
        string? text = (kept.Entry.Content as EntryContent.Happening)?.Text;
        if (cell.Member > 0)
        {
            TakeOfMember(cell, text);
        }
        else if (cell.Group > 0)
        {
            (groups.TryGetValue(cell.Group, out GroupState? group) ? group : groups[cell.Group] = new GroupState(IsCover)).Take(kept);
        }
        else if (text is not null)
        {
            TakeOfLesson(cell.What, text, kept);
        }
    }

    private void TakeOfMember(JournalCell cell, string? text)
    {
        MemberState member = members.GetValueOrDefault(cell.Member) ?? MemberState.Unknown;
        members[cell.Member] = (cell.What, text) switch
        {
            (Acts.Presence, string presence) => member with { Presence = presence },
            (Acts.SeatOf, string seat) => member with { Group = int.TryParse(seat, CultureInfo.InvariantCulture, out int group) ? group : 0 },
            _ => member,
        };
    }

    private void TakeOfLesson(string what, string text, KeptEntry kept)
    {
        switch (what)
        {
            case Acts.Began:
                BeganAt ??= kept.ReceivedAt;
                break;
            case Acts.Cover when BeganAt is null:
                TurnInto(text == Yes, kept.ReceivedAt);
                break;
            case Acts.WorkBegan:
                WorkBeganAt ??= kept.ReceivedAt;
                break;
            case Acts.Bell when double.TryParse(text, CultureInfo.InvariantCulture, out double bell):
                MovedBell = bell;
                break;
            case Acts.Stop or Acts.Resume:
                IsStopped = what == Acts.Stop;
                break;
            case Acts.Announce:
                Announcement = text;
                break;
            case Acts.ShowAccepted:
                AcceptedShown = text == Yes;
                break;
            case Acts.ShowNames:
                NamesShown = text == Yes;
                break;
            case Acts.GroupAdded:
                AddedGroups++;
                break;
            case Acts.Ended:
                EndedAt ??= kept.ReceivedAt;
                break;
            case Acts.Reopened:
                EndedAt = null;
                break;
            default:
                break;
        }
    }

    private void TurnInto(bool isCover, DateTimeOffset at)
    {
        CoverSince = isCover ? CoverSince ?? at : null;
        foreach (GroupState group in groups.Values)
        {
            group.TurnInto(isCover);
        }
    }

    /// <summary>The text of a happening that says yes.</summary>
    public const string Yes = CoverActs.Yes;
}
