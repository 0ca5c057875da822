using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Clock;

/// <summary>What a teacher means to do: the class, its balances, the lesson, and which of the practical's steps it does itself.
/// Never changes; each <c>With</c> returns another.</summary>
public sealed class PlanSettings
{
    /// <summary>Most groups that are planned for; classes have up to 18.</summary>
    public const int MostGroups = 60;

    /// <summary>Most trials of a group.</summary>
    public const int MostTrials = 6;

    /// <summary>Longest lesson in min.</summary>
    public const double LongestLesson = 600;

    /// <summary>The full practical by so many groups, two students each: one trial, heated twice and again while the mass
    /// changes, all of it in the lesson.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">1 to <see cref="MostGroups"/>; 1 is a demonstration.</param>
    /// <param name="balances">The balances, at least one.</param>
    /// <param name="minutes">Length of the lesson in min, above 0 to <see cref="LongestLesson"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="ArgumentException">There is no balance.</exception>
    public PlanSettings(Practical practical, int groups, IReadOnlyList<Balance> balances, double minutes)
    {
        ArgumentNullException.ThrowIfNull(practical);
        Practical = practical;
        Groups = Within(groups, 1, MostGroups, nameof(groups));
        Students = 2 * groups;
        Balances = balances is { Count: > 0 } ? balances : throw new ArgumentException("At least one balance is needed.", nameof(balances));
        Minutes = minutes > 0 && minutes <= LongestLesson ? minutes : throw new ArgumentOutOfRangeException(nameof(minutes), minutes, "No lesson is so long.");
        Heatings = Math.Min(2, MostHeatings(practical));
        SampleInGrams = practical.Amounts?.UsualInGrams ?? practical.Limits.LargestSample;
        Language = EngineLanguage.British.For(practical);
    }

    private PlanSettings(PlanSettings other)
    {
        Practical = other.Practical;
        (Groups, Students, Minutes) = (other.Groups, other.Students, other.Minutes);
        (Balances, Conditions) = (other.Balances, other.Conditions);
        (Trials, Heatings, SampleInGrams) = (other.Trials, other.Heatings, other.SampleInGrams);
        (Prepared, StaggerInMinutes) = (other.Prepared, other.StaggerInMinutes);
        (LeftOut, Moved, Alongside, Unread) = (other.LeftOut, other.Moved, other.Alongside, other.Unread);
        (Times, Kit, Learned) = (other.Times, other.Kit, other.Learned);
        Language = other.Language;
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>How many groups work side by side.</summary>
    public int Groups { get; private set; }

    /// <summary>How many students there are.</summary>
    public int Students { get; private set; }

    /// <summary>The balances. Group 1 is given the first, group 2 the second, and so on in turn; where one is busy, any other
    /// that is free is used.</summary>
    public IReadOnlyList<Balance> Balances { get; private set; }

    /// <summary>From the bell to the bell, in min.</summary>
    public double Minutes { get; private set; }

    /// <summary>Trials of each group.</summary>
    public int Trials { get; private set; } = 1;

    /// <summary>How often every group heats. Above 1, a group whose mass still changes heats again, as often as the practical
    /// allows.</summary>
    public int Heatings { get; private set; }

    /// <summary>The usual mass of a sample in g.</summary>
    public double SampleInGrams { get; private set; }

    /// <summary>Whether a technician does before the lesson what can be done before.</summary>
    public bool Prepared { get; private set; }

    /// <summary>Minutes by which every second group starts later.</summary>
    public double StaggerInMinutes { get; private set; }

    /// <summary>What is left out, by the practical's words for it.</summary>
    public IReadOnlyCollection<string> LeftOut { get; private set; } = [];

    /// <summary>Ids of the steps that another lesson takes over.</summary>
    public IReadOnlyCollection<string> Moved { get; private set; } = [];

    /// <summary>Ids of the steps that are done while another goes on.</summary>
    public IReadOnlyCollection<string> Alongside { get; private set; } = [];

    /// <summary>Ids of the readings that are not taken.</summary>
    public IReadOnlyCollection<string> Unread { get; private set; } = [];

    /// <summary>The sheet's questions in its order, without those that ask about a weighing that this plan does not come to: the last two where
    /// everything is heated once.</summary>
    public IReadOnlyList<SheetQuestion> Questions => [.. Practical.Sheet.Questions.OrderBy(q => q.Topic).Where(q => q.Rounds <= Heatings)];

    /// <summary>Ids of what is said of the class, besides what its steps bring about.</summary>
    public IReadOnlyList<string> Conditions { get; private set; } = [];

    /// <summary>Times of one's own, by step.</summary>
    public IReadOnlyDictionary<string, StepMinutes> Times { get; private set; } = new Dictionary<string, StepMinutes>();

    /// <summary>From where its learned numbers are; null where all are the file's or its own.</summary>
    public LearnedFrom? Learned { get; private set; }

    /// <summary>How many pieces of a kit there are, where there are fewer than the groups need.</summary>
    public IReadOnlyDictionary<string, int> Kit { get; private set; } = new Dictionary<string, int>();

    /// <summary>The language in which everything is said that follows from the plan.</summary>
    public EngineLanguage Language { get; private set; }

    /// <summary>Most heatings that a practical allows; 1 where nothing is repeated.</summary>
    public static int MostHeatings(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return practical.Procedure.OfType<RepeatEvent>().Select(r => r.Most).DefaultIfEmpty(1).Max();
    }

    /// <summary>The largest sample in g that is planned for: what a class may use, or what the vessel takes where that is less.</summary>
    public static double LargestSample(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return Math.Min(practical.Limits.LargestSample, practical.Amounts?.FitsInGrams ?? double.PositiveInfinity);
    }

    /// <summary>With other numbers of groups and students.</summary>
    public PlanSettings WithClass(int groups, int students) => Copy(s =>
        (s.Groups, s.Students) = (Within(groups, 1, MostGroups, nameof(groups)), Within(students, 1, 1000, nameof(students))));

    /// <summary>With other balances.</summary>
    public PlanSettings WithBalances(IReadOnlyList<Balance> balances) => Copy(s =>
        s.Balances = balances is { Count: > 0 } ? balances : throw new ArgumentException("At least one balance is needed.", nameof(balances)));

    /// <summary>With another length of the lesson.</summary>
    public PlanSettings WithMinutes(double minutes) => Copy(s => s.Minutes = minutes > 0 && minutes <= LongestLesson
        ? minutes : throw new ArgumentOutOfRangeException(nameof(minutes), minutes, "No lesson is so long."));

    /// <summary>With another number of trials.</summary>
    public PlanSettings WithTrials(int trials) => Copy(s => s.Trials = Within(trials, 1, MostTrials, nameof(trials)));

    /// <summary>With another number of heatings, no more than the practical allows.</summary>
    public PlanSettings WithHeatings(int heatings) => Copy(s => s.Heatings = Within(heatings, 1, MostHeatings(Practical), nameof(heatings)));

    /// <summary>With another sample, in g, above 0. Whether a class may use so much is the caller's to ask: see
    /// <see cref="Practical.Limits"/>.</summary>
    public PlanSettings WithSample(double grams) => Copy(s => s.SampleInGrams = grams > 0 && double.IsFinite(grams)
        ? grams : throw new ArgumentOutOfRangeException(nameof(grams), grams, "A sample weighs more than nothing."));

    /// <summary>With the technician's work before the lesson, or without.</summary>
    public PlanSettings WithPrepared(bool prepared) => Copy(s => s.Prepared = prepared);

    /// <summary>With every second group starting so many minutes later, from 0.</summary>
    public PlanSettings WithStagger(double minutes) => Copy(s => s.StaggerInMinutes = minutes >= 0 && minutes <= LongestLesson
        ? minutes : throw new ArgumentOutOfRangeException(nameof(minutes), minutes, "Minutes from 0 are expected."));

    /// <summary>Leaving something out as well, by one of the practical's words for it.</summary>
    public PlanSettings WithLeftOut(string optional) => Copy(s => s.LeftOut = [.. LeftOut.Append(Known(
        optional, Practical.Steps.Select(step => step.Place.Freedom.Optional)))]);

    /// <summary>With a step moved to another lesson.</summary>
    public PlanSettings WithMoved(string step) => Copy(s => s.Moved = [.. Moved.Append(Known(
        step, Practical.Steps.Where(x => x.Place.Freedom.Elsewhere != OtherLesson.None).Select(x => x.Id)))]);

    /// <summary>With a step done while another goes on.</summary>
    public PlanSettings WithAlongside(string step) => Copy(s => s.Alongside = [.. Alongside.Append(Known(
        step, Practical.Steps.Where(x => x.Place.Freedom.Alongside is not null).Select(x => x.Id)))]);

    /// <summary>Without a reading.</summary>
    public PlanSettings WithUnread(string reading) => Copy(s => s.Unread = [.. Unread.Append(Known(
        reading, Practical.Readings.Select(r => r.Id)))]);

    /// <summary>With a reading that was left out.</summary>
    public PlanSettings WithRead(string reading) => Copy(s => s.Unread = [.. Unread.Where(r => r != reading)]);

    /// <summary>With what is said of the class.</summary>
    public PlanSettings WithConditions(IReadOnlyList<string> conditions) => Copy(s => s.Conditions =
        [.. conditions.Select(c => Known(c, Practical.Conditions.Select(x => x.Id)))]);

    /// <summary>With a step's times of one's own.</summary>
    public PlanSettings WithTime(string step, StepMinutes minutes) => Copy(s => s.Times = new Dictionary<string, StepMinutes>(Times)
    {
        [Known(step, Practical.Steps.Select(x => x.Id))] = minutes,
    });

    /// <summary>With word of where learned numbers are from that it has already.</summary>
    public PlanSettings WithLearned(LearnedFrom learned) => Copy(s => s.Learned = learned);

    /// <summary>With so many pieces of a kit for all groups, from 1.</summary>
    public PlanSettings WithKit(string piece, int number) => Copy(s => s.Kit = new Dictionary<string, int>(Kit)
    {
        [Known(piece, Practical.Kit.Select(x => x.Id))] = Within(number, 1, 1000, nameof(number)),
    });

    /// <summary>In another language.</summary>
    public PlanSettings WithLanguage(EngineLanguage language) => Copy(s => s.Language = language.For(Practical));

    /// <summary>Whether a step is done, by the class in this lesson or by somebody before or after it.</summary>
    public bool IsDone(LessonStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return !(step.Place.Freedom.Optional is string optional && LeftOut.Contains(optional))
            && !(step.Reading is string reading && Unread.Contains(reading));
    }

    /// <summary>Whether the class does a step in this lesson.</summary>
    public bool IsInLesson(LessonStep step) =>
        IsDone(step) && !Moved.Contains(step.Id) && !(Prepared && step.Place.Freedom.Prepared);

    /// <summary>The step of this plan that brings about what may be said of a class; null where none does.</summary>
    public LessonStep? StepThatGives(string condition) => Practical.Steps.FirstOrDefault(s => s.Place.Freedom.Gives == condition && IsDone(s));

    /// <summary>What holds of the class: what its steps bring about, then what was said of it.</summary>
    public IReadOnlyList<string> AllConditions =>
        [.. Practical.Steps.Where(IsDone).Select(s => s.Place.Freedom.Gives).OfType<string>().Concat(Conditions).Distinct()];

    /// <summary>What the plan rests on, in a few words each, for people.</summary>
    public IReadOnlyList<string> InWords => SettingsWords.Of(this);

    private PlanSettings Copy(Action<PlanSettings> change)
    {
        var copy = new PlanSettings(this);
        change(copy);
        return copy;
    }

    private static int Within(int value, int least, int most, string name) => value >= least && value <= most
        ? value
        : throw new ArgumentOutOfRangeException(name, value, $"A number from {least} to {most} is expected.");

    private static string Known(string word, IEnumerable<string?> known) =>
        known.Contains(word) ? word : throw new ArgumentException($"The practical knows no '{word}' there.", nameof(word));
}
