using System.Globalization;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What a group's happenings add up to.</summary>
public sealed class GroupState
{
    private readonly List<string> openCorrections = [];
    private readonly Dictionary<string, int> lookedAgain = new(StringComparer.Ordinal);
    private readonly HashSet<string> devices = new(StringComparer.Ordinal);
    private readonly HashSet<string> bound = new(StringComparer.Ordinal);
    private readonly HashSet<int> simulated = [];
    private int starts = 1;
    private (int Trial, string Condition)? beforeCover;

    /// <summary>A group of which nothing was heard yet.</summary>
    /// <param name="isCover">Whether its lesson is a cover lesson.</param>
    public GroupState(bool isCover = false) => TurnInto(isCover);

    /// <summary>Its lesson is turned into a cover lesson, or back: it goes on with simulated readings in a trial of their own, or with what it had.</summary>
    public void TurnInto(bool isCover)
    {
        if (isCover && beforeCover is null)
        {
            beforeCover = (Trial, Condition);
            Condition = Condition == Acts.Conditions.Absent ? Condition : Acts.Conditions.Simulated;
            BrokenAt = null;
            GoToSimulated();
        }
        else if (!isCover && beforeCover is (int trial, string condition))
        {
            beforeCover = null;
            Condition = condition;
            GoTo(trial);
        }
    }

    /// <summary>The trial it is at: a new one each time the group starts again, and one for simulated readings, so that those never
    /// stand among readings of a balance.</summary>
    public int Trial { get; private set; } = 1;

    /// <summary>Whether the readings of its present trial are simulated, whatever became of it since.</summary>
    public bool IsSimulated => IsSimulatedIn(Trial);

    /// <summary>Whether the readings of one of its trials are simulated.</summary>
    public bool IsSimulatedIn(int trial) => simulated.Contains(trial);

    /// <summary>What became of it, one of <see cref="Acts.Conditions"/>.</summary>
    public string Condition { get; private set; } = Acts.Conditions.AtWork;

    /// <summary>The group whose data it shares, or null.</summary>
    public int? JoinedGroup => Condition.StartsWith(Acts.Conditions.JoinedPrefix, StringComparison.Ordinal)
        && int.TryParse(Condition.AsSpan(Acts.Conditions.JoinedPrefix.Length), CultureInfo.InvariantCulture, out int other) ? other : null;

    /// <summary>When its flame was last lit or put out, or null.</summary>
    public DateTimeOffset? FlameOnAt { get; private set; }

    /// <summary>When its flame was last put out, or null; null again once a flame is lit.</summary>
    public DateTimeOffset? FlameOutAt { get; private set; }

    /// <summary>The step of this trial that it last said it had come to, and when, or null.</summary>
    public (string Step, DateTimeOffset At)? Told { get; private set; }

    /// <summary>When it last asked for the teacher, or null once the teacher was there.</summary>
    public DateTimeOffset? HelpAskedAt { get; private set; }

    /// <summary>What it wants put right and nobody has dealt with.</summary>
    public IReadOnlyList<string> OpenCorrections => openCorrections;

    /// <summary>When the first of those was asked for, or null.</summary>
    public DateTimeOffset? CorrectionAskedAt { get; private set; }

    /// <summary>When its vessel broke, or null where it has gone on since.</summary>
    public DateTimeOffset? BrokenAt { get; private set; }

    /// <summary>What it decided itself after its last weighing, or null.</summary>
    public GroupDecision? Decided { get; private set; }

    /// <summary>Id of the weighing that it typed last, or null.</summary>
    public string? LastWeighing { get; private set; }

    /// <summary>When it last did anything, or null.</summary>
    public DateTimeOffset? LastSeenAt { get; private set; }

    /// <summary>How many devices type for it.</summary>
    public int Devices => devices.Count;

    /// <summary>Whether a device has typed something for it since the teacher last let its devices go: then it stays.</summary>
    public bool Binds(string device) => bound.Contains(device);

    /// <summary>How often the reading with an id was asked about and kept.</summary>
    public int KeptAfterAsking(string weighing) => lookedAgain.GetValueOrDefault(weighing);

    /// <summary>Takes the next entry of the group.</summary>
    public void Take(KeptEntry kept)
    {
        LastSeenAt = kept.ReceivedAt;
        if (kept.Entry.Device != Serving.Visitor.TeachersDevice)
        {
            TakeDevice(kept.Entry);
        }

        if (kept.Entry is { Content: EntryContent.Reading, Replaces: null })
        {
            // A new weighing asks for a new decision; a correction of an old one does not.
            (Decided, LastWeighing) = (null, kept.Entry.Cell.What);
            Condition = Condition == Acts.Conditions.Absent ? Working : Condition;
        }
        else if (kept.Entry.Content is EntryContent.Happening happening)
        {
            TakeHappening(kept.Entry.Cell.What, happening.Text, WhenTyped.Of(kept));
        }
    }

    private void TakeDevice(JournalEntry entry)
    {
        switch (entry.Cell.What)
        {
            case Acts.DeviceIn:
                devices.Add(entry.Device);
                break;
            case Acts.DeviceOut:
                devices.Remove(entry.Device);
                break;
            default:
                devices.Add(entry.Device);
                bound.Add(entry.Device);
                break;
        }
    }

    private void TakeHappening(string what, string text, DateTimeOffset at)
    {
        switch (what)
        {
            case Acts.FlameOn:
                (FlameOnAt, FlameOutAt) = (at, null);
                break;
            case Acts.FlameOut:
                FlameOutAt = at;
                break;
            case Acts.AtStep:
                Told = (text, at);
                break;
            case Acts.Help:
                HelpAskedAt ??= at;
                break;
            case Acts.HelpGiven:
                HelpAskedAt = null;
                break;
            case Acts.CorrectionAsked:
                openCorrections.Add(text);
                CorrectionAskedAt ??= at;
                break;
            case Acts.CorrectionSettled:
                openCorrections.Clear();
                CorrectionAskedAt = null;
                break;
            case Acts.Decided:
                Decided = LastWeighing is null ? null : new GroupDecision(LastWeighing, text == GroupDecision.Reheat, at);
                break;
            case Acts.LookedAgain:
                lookedAgain[text] = lookedAgain.GetValueOrDefault(text) + 1;
                break;
            case Acts.DevicesFreed:
                bound.Clear();
                break;
            case Acts.Condition:
                TakeCondition(text, at);
                break;
            default:
                break;
        }
    }

    /// <summary>What a group is that works: in a cover lesson with simulated readings, whatever is said of it.</summary>
    private string Working => beforeCover is null ? Acts.Conditions.AtWork : Acts.Conditions.Simulated;

    private void TakeCondition(string text, DateTimeOffset at)
    {
        if (beforeCover is not null && (text is Acts.Conditions.AtWork or Acts.Conditions.Broken or Acts.Conditions.Simulated or Acts.Conditions.StartedAgain))
        {
            // Nothing was there that could break. A new start has readings of the same balance that nobody sees.
            Condition = Acts.Conditions.Simulated;
            if (text == Acts.Conditions.StartedAgain)
            {
                GoToSimulated();
            }

            return;
        }

        Condition = text;
        BrokenAt = text == Acts.Conditions.Broken ? at : null;
        switch (text)
        {
            case Acts.Conditions.StartedAgain:
                GoTo(++starts);
                break;
            case Acts.Conditions.Simulated when !IsSimulated:
                GoToSimulated();
                break;
            case Acts.Conditions.AtWork when IsSimulated:
                GoTo(Enumerable.Range(1, starts).Last(t => !simulated.Contains(t)));
                break;
            default:
                break;
        }
    }

    private void GoToSimulated()
    {
        simulated.Add(++starts);
        GoTo(starts);
    }

    private void GoTo(int trial)
    {
        Trial = trial;
        (FlameOnAt, FlameOutAt, Told, Decided, LastWeighing) = (null, null, null, null, null);
    }
}
