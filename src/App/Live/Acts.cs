using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// What can happen in a lesson besides readings and observations: the names of happenings in the journal. The lesson's state
/// is what these add up to, so that a restart, another screen and next year's look at the records all find the same.
/// </summary>
public static class Acts
{
    // Of the whole lesson, by the teacher (group 0).

    /// <summary>The lesson's clock starts.</summary>
    public const string Began = CoverActs.Began;

    /// <summary>It is turned into a cover lesson, or back: yes or no. Heard only before it begins.</summary>
    public const string Cover = CoverActs.Cover;

    /// <summary>The groups' own work begins: the class is through with what it does together.</summary>
    public const string WorkBegan = "work-began";

    /// <summary>The bell moves: its minute since the beginning.</summary>
    public const string Bell = "bell";

    /// <summary>Everybody stops: gas off, stand still.</summary>
    public const string Stop = "stop";

    /// <summary>Work goes on.</summary>
    public const string Resume = "resume";

    /// <summary>What the projector announces as the next step; empty takes it away.</summary>
    public const string Announce = "announce";

    /// <summary>Whether the accepted value is shown: yes or no.</summary>
    public const string ShowAccepted = "show-accepted";

    /// <summary>Whether names are shown on the projector: yes or no.</summary>
    public const string ShowNames = "show-names";

    /// <summary>The lesson is over.</summary>
    public const string Ended = "ended";

    /// <summary>It goes on after all.</summary>
    public const string Reopened = "reopened";

    /// <summary>The lesson has one group more than planned.</summary>
    public const string GroupAdded = "group-added";

    /// <summary>A student is present, late or away (member).</summary>
    public const string Presence = "presence";

    /// <summary>A student's group: its number (member).</summary>
    public const string SeatOf = "seat";

    /// <summary>A student who was away was given data of their own: these, as text (member).</summary>
    public const string CatchUp = "catch-up";

    /// <summary>How the lesson's answers are marked: a <see cref="MarkingSettings"/> as text. The last one holds.</summary>
    public const string Marking = "marking";

    /// <summary>Whether students see what is said of their answers, where that waits for the teacher: yes or no.</summary>
    public const string ShowFeedback = "show-feedback";

    /// <summary>Before the id of what was asked: a student's answer (member).</summary>
    public const string AnswerPrefix = "answer.";

    /// <summary>Before the id of what was asked: the teacher's own marks for a student's answer (member).</summary>
    public const string MarkPrefix = "mark.";

    /// <summary>Whether students' answers are taken, whatever the lesson does: open or closed.</summary>
    public const string Answering = "answering";

    /// <summary>A device answers for a student (member): with the student's word, which was drawn when the first device did.</summary>
    public const string AnswersFor = "answers-for";

    // Of a group, by itself or by the teacher.

    /// <summary>The flame is lit.</summary>
    public const string FlameOn = "flame-on";

    /// <summary>The flame is out: what cools is hot from now.</summary>
    public const string FlameOut = "flame-out";

    /// <summary>The group has come to a step, having tapped 'done' at the one before: its id.</summary>
    public const string AtStep = "at-step";

    /// <summary>The group asks for the teacher.</summary>
    public const string Help = "help";

    /// <summary>The teacher has been there.</summary>
    public const string HelpGiven = "help-given";

    /// <summary>The group asks that a reading be put right: a sentence with its name, what it should be and why.</summary>
    public const string CorrectionAsked = "correction-asked";

    /// <summary>The teacher has dealt with it.</summary>
    public const string CorrectionSettled = "correction-settled";

    /// <summary>What the group decided itself: reheat or stop.</summary>
    public const string Decided = "decided";

    /// <summary>A reading was asked about and kept as it was: its id.</summary>
    public const string LookedAgain = "looked-again";

    /// <summary>What became of the group: one of <see cref="Conditions"/>.</summary>
    public const string Condition = "condition";

    /// <summary>A device has taken the group.</summary>
    public const string DeviceIn = "device-in";

    /// <summary>A device has left it for another.</summary>
    public const string DeviceOut = "device-out";

    /// <summary>The teacher lets the group's devices take another group, though they have typed something.</summary>
    public const string DevicesFreed = "devices-freed";

    /// <summary>Those of a group's own acts that its device may send.</summary>
    public static IReadOnlySet<string> OfGroups { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        FlameOn, FlameOut, AtStep, Help, CorrectionAsked, Decided, LookedAgain, Condition,
    };

    /// <summary>Those conditions that a group may report itself; what follows from them the teacher decides.</summary>
    public static IReadOnlySet<string> ConditionsOfGroups { get; } =
        new HashSet<string>(StringComparer.Ordinal) { Conditions.Broken, Conditions.Finished };

    /// <summary>What a condition can be; <c>joined:4</c> names the group whose data it shares.</summary>
    public static class Conditions
    {
        public const string AtWork = "at-work";
        public const string Broken = "broken";
        public const string StartedAgain = "started-again";
        public const string Simulated = "simulated";
        public const string Finished = "finished";
        public const string Absent = "absent";
        public const string JoinedPrefix = "joined:";
    }
}
