using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Clock;

/// <summary>
/// A plan's lesson made ready to be run: which steps a group does in which order, what they need, and what is done while
/// something else goes on. Everything that does not change from lesson to lesson.
/// </summary>
internal sealed class LessonRoute
{
    private readonly PlanSettings settings;
    private readonly DurationTable durations;
    private readonly List<IReadOnlyList<Need>> needs = [];

    /// <summary>Makes it ready.</summary>
    public LessonRoute(PlanSettings settings, DurationTable durations)
    {
        this.settings = settings;
        this.durations = durations;
        Practical practical = settings.Practical;
        Things = [.. AllThings(settings)];
        RouteStep[] steps = [.. practical.Steps.Where(s => settings.IsInLesson(s) && During(s) is null).Select(Ready)];
        Opening = [.. steps.TakeWhile(s => s.Together)];
        RouteStep[] rest = steps[Opening.Length..];
        int first = Array.FindIndex(rest, s => s.Step.Place.Per == StepPer.Trial);
        int last = Array.FindLastIndex(rest, s => s.Step.Place.Per == StepPer.Trial);
        Before = first < 0 ? rest : rest[..first];
        RouteStep[] trial = first < 0 ? [] : rest[first..(last + 1)];
        After = first < 0 ? [] : rest[(last + 1)..];
        int round = Array.FindIndex(trial, s => s.Step.Place.Round != StepRound.None);
        int lastRound = Array.FindLastIndex(trial, s => s.Step.Place.Round != StepRound.None);
        TrialBefore = round < 0 ? trial : trial[..round];
        RouteStep[] heating = round < 0 ? [] : trial[round..(lastRound + 1)];
        FirstRound = [.. heating.Where(s => s.Step.Place.Round != StepRound.Again)];
        AgainRound = [.. heating.Where(s => s.Step.Place.Round is StepRound.Again or StepRound.Each)];
        TrialAfter = round < 0 ? [] : trial[(lastRound + 1)..];
        StepCount = practical.Steps.Count;
        Needs = needs;
        FirstFlames = FlamesOf(FirstRound);
        AgainFlames = FlamesOf(AgainRound);
        LateBy = durations.Of(practical.Classroom.LateBy);
        NewStart = durations.Of(practical.Classroom.NewStart);
    }

    /// <summary>Places of the first and the last step with a flame in the first heating; -1 where there is none.</summary>
    public (int First, int Last) FirstFlames { get; }

    /// <summary>The same in every further heating.</summary>
    public (int First, int Last) AgainFlames { get; }

    /// <summary>By how much latecomers are late.</summary>
    public Pert LateBy { get; }

    /// <summary>How long it takes to fetch a spare.</summary>
    public Pert NewStart { get; }

    /// <summary>What is shared and scarce.</summary>
    public SharedThing[] Things { get; }

    /// <summary>What steps need of it.</summary>
    public IReadOnlyList<IReadOnlyList<Need>> Needs { get; }

    /// <summary>What the class does together before groups begin; latecomers are not waited for.</summary>
    public RouteStep[] Opening { get; }

    /// <summary>What a group does before its trials.</summary>
    public RouteStep[] Before { get; }

    /// <summary>What begins each trial.</summary>
    public RouteStep[] TrialBefore { get; }

    /// <summary>The first heating.</summary>
    public RouteStep[] FirstRound { get; }

    /// <summary>Every further heating.</summary>
    public RouteStep[] AgainRound { get; }

    /// <summary>What ends each trial.</summary>
    public RouteStep[] TrialAfter { get; }

    /// <summary>What follows the trials.</summary>
    public RouteStep[] After { get; }

    /// <summary>How many steps the practical has.</summary>
    public int StepCount { get; }

    private static (int First, int Last) FlamesOf(RouteStep[] steps) => (Array.FindIndex(steps, s => s.Flame), Array.FindLastIndex(steps, s => s.Flame));

    /// <summary>Only what may be waited for: a thing of which every group has its own share cannot run out.</summary>
    private static IEnumerable<SharedThing> AllThings(PlanSettings settings)
    {
        LessonStep[] steps = [.. settings.Practical.Steps.Where(settings.IsInLesson)];
        foreach (string id in steps.SelectMany(s => s.Kit.Keys).Distinct())
        {
            int most = steps.Max(s => s.Kit.GetValueOrDefault(id));
            SharedThing thing = ThingOf(settings, id);
            if (thing.Units < most * settings.Groups)
            {
                yield return thing with { Units = Math.Max(thing.Units, most) };
            }
        }
    }

    private static SharedThing ThingOf(PlanSettings settings, string id)
    {
        if (id is LessonStep.Balance or LessonStep.Teacher)
        {
            var texts = new LessonTexts(settings.Language);
            return id == LessonStep.Balance
                ? new SharedThing(id, settings.Balances.Count == 1 ? texts.TheBalance : texts.TheBalances, settings.Balances.Count)
                : new SharedThing(id, texts.TheTeacher, 1);
        }

        KitItem item = settings.Practical.Kit.First(k => k.Id == id);
        int own = item.Need.Per switch
        {
            KitPer.Group => (int)Math.Ceiling(item.Need.Number) * settings.Groups,
            KitPer.Student => (int)Math.Ceiling(item.Need.Number) * settings.Students,
            _ => (int)Math.Ceiling(item.Need.Number),
        };
        return new SharedThing(id, item.Label, settings.Kit.GetValueOrDefault(id, own));
    }

    /// <summary>The step during which one is done in this plan, or null.</summary>
    private string? During(LessonStep step)
    {
        string? during = step.Place.Freedom.During ?? (settings.Alongside.Contains(step.Id) ? step.Place.Freedom.Alongside : null);
        // Where that step is not in the lesson, this one takes its own time.
        return during is not null && settings.IsInLesson(settings.Practical.Steps.First(s => s.Id == during)) ? during : null;
    }

    private RouteStep Ready(LessonStep step)
    {
        LessonStep[] meanwhile = [.. settings.Practical.Steps.Where(s => settings.IsInLesson(s) && During(s) == step.Id)];
        double relative = settings.SampleInGrams / (settings.Practical.Amounts?.UsualInGrams ?? settings.SampleInGrams);
        return new RouteStep(
            step,
            settings.Practical.Steps.TakeWhile(s => s != step).Count(),
            durations.Of(settings.Times.GetValueOrDefault(step.Id, step.Minutes)),
            Math.Pow(relative, step.Place.Grows),
            NeedOf(step),
            HasFlame(settings.Practical, step),
            Cools(settings.Practical, step),
            [.. meanwhile.Where(s => s.Place.Per == StepPer.Trial).Select(Ready)],
            [.. meanwhile.Where(s => s.Place.Per != StepPer.Trial).Select(Ready)]);
    }

    /// <summary>Whether a flame burns during a step.</summary>
    public static bool HasFlame(Practical practical, LessonStep step) => step.Kit.Keys.Any(id => practical.Kit.Any(k => k.Id == id && k.Flame));

    /// <summary>What follows a flame in a trial and holds nothing is cooling: there is nothing else to do with a hot vessel.</summary>
    public static bool Cools(Practical practical, LessonStep step) => step is { Kit.Count: 0, Place.Per: StepPer.Trial }
        && practical.Steps.TakeWhile(s => s != step).LastOrDefault() is LessonStep before && HasFlame(practical, before);

    private int NeedOf(LessonStep step)
    {
        Need[] need = [.. Things.Select((thing, i) => new Need(i, step.Kit.GetValueOrDefault(thing.Id))).Where(n => n.Units > 0)];
        if (need.Length == 0)
        {
            return -1;
        }

        int known = needs.FindIndex(n => n.SequenceEqual(need));
        if (known < 0)
        {
            needs.Add(need);
        }

        return known < 0 ? needs.Count - 1 : known;
    }
}
