using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>
/// Draws where groups are now. What a group does since the last thing heard of it is drawn anew until what should have been
/// heard by now has not happened before now: that is the law of the rest, given that it was not heard. One belongs to one
/// thread (docs/methods/watching.md).
/// </summary>
internal sealed class StartDraw
{
    /// <summary>Draws after which a group counts as due: what lasts so long is nearly over.</summary>
    private const int MostDraws = 64;

    /// <summary>Lessons from here on only redraw what is known to have lasted longer.</summary>
    private const int FirstRedraw = 1 << 25;

    private readonly OutlookScene scene;
    private readonly LessonRun run;
    private readonly LessonTimes times;
    private readonly LessonTimes usual;
    private readonly ReheatDraws? reheats;
    private readonly RouteState probe = new();
    private readonly double[] ends;
    private readonly double[] arrived;
    private readonly double[] lasts;
    private readonly int[] attempts;
    private readonly bool[] served;
    private readonly Dictionary<int, double[]> frees;
    private readonly double[] keys;
    private ulong seed;
    private int lesson;

    /// <summary>Prepares it.</summary>
    public StartDraw(OutlookScene scene, LessonRun run, ReheatDraws? reheats)
    {
        this.scene = scene;
        this.run = run;
        this.reheats = reheats;
        times = new LessonTimes(scene.Plan, scene.Route, scene.Pace.Factor);
        usual = new LessonTimes(scene.Plan, scene.Route, scene.Pace.Factor);
        ends = new double[scene.Groups.Max(g => g.Chain.Places.Count) + 1];
        arrived = new double[scene.Groups.Count];
        keys = new double[scene.Groups.Count];
        lasts = new double[scene.Groups.Count];
        attempts = new int[scene.Groups.Count];
        served = new bool[scene.Groups.Count];
        frees = scene.Queues.ToDictionary(q => q, q => new double[scene.UnitsOf(q)]);
        Start = new LessonStart(scene.Groups.Count);
        Places = new int[scene.Groups.Count];
    }

    /// <summary>Where the lesson begins again.</summary>
    public LessonStart Start { get; }

    /// <summary>The place of each group in its trial's route; that many where nothing is left, -1 where it has yet to begin.</summary>
    public int[] Places { get; }

    /// <summary>Draws one lesson.</summary>
    public void Draw(ulong seedOfAll, int number)
    {
        (seed, lesson) = (seedOfAll, number);
        usual.Begin(seed, lesson);
        Start.Minute = scene.Moment.Now;
        Start.FlameOut = scene.FlameOut;
        Start.OpeningEnd = scene.IsTogether ? Opening() : scene.WorkBegan;
        for (int g = 0; g < scene.Groups.Count; g++)
        {
            arrived[g] = double.NaN;
            Put(g, scene.Groups[g], Start.Groups[g]);
        }

        Serve();
        Line();
    }

    /// <summary>When the class is through with what it does together, given that it is not yet.</summary>
    private double Opening()
    {
        double end = 0;
        for (int t = 0; t < MostDraws; t++)
        {
            times.Begin(seed, KeyOf(t));
            end = scene.Route.Opening.Sum(step => times.Of(-1, step, probe));
            if (end >= scene.Moment.Now)
            {
                return end;
            }
        }

        return Math.Max(end, scene.Moment.Now);
    }

    private int KeyOf(int attempt) => attempt == 0 ? lesson : FirstRedraw + (lesson * MostDraws) + attempt;

    private void Put(int g, KnownGroup known, GroupStart start)
    {
        (start.IsAway, start.BeginsAt, start.Rest, start.Draws) = (known.IsAway, null, null, null);
        (start.Trial, start.Round, start.Rounds) = (Math.Min(known.Group.Trial, scene.Plan.Trials) - 1, 0, 0);
        if (known.IsAway || known.IsFinished)
        {
            PutAt(g, known, start, known.IsAway || known.Together < 0 ? known.Trial.Places.Count : known.Together);
        }
        else if (known.IsTogether)
        {
            start.BeginsAt = Math.Max(scene.Moment.Now, run.Start(Start.OpeningEnd, usual, g));
            Places[g] = -1;
        }
        else
        {
            Walk(g, known, start);
        }
    }

    /// <summary>Draws the steps since the last thing heard until the next has not come yet. Whether a reading for which others may
    /// wait too has come is seen once all groups are drawn.</summary>
    private void Walk(int g, KnownGroup known, GroupStart start)
    {
        GroupChain chain = known.Chain;
        int bestAttempt = 0;
        double best = double.NegativeInfinity;
        for (int t = 0; t < MostDraws; t++)
        {
            double since = Lay(g, known, KeyOf(t));
            double heard = since + ends[chain.Places.Count];
            if (since > scene.Moment.Now || !chain.IsHeard || chain.Queue >= 0 || heard > scene.Moment.Now)
            {
                Take(g, known, start, since, t);
                return;
            }

            (best, bestAttempt) = heard > best ? (heard, t) : (best, bestAttempt);
        }

        Take(g, known, start, Lay(g, known, KeyOf(bestAttempt)), bestAttempt);
    }

    /// <summary>Lays a draw of the chain out: the minutes at which its places end, from its beginning.</summary>
    /// <returns>The minute at which it begins.</returns>
    private double Lay(int g, KnownGroup known, int key)
    {
        times.Begin(seed, key);
        probe.Clear();
        (probe.Trial, probe.Rounds) = (Math.Min(known.Group.Trial, scene.Plan.Trials) - 1, known.LeastRounds);
        double end = 0;
        ends[0] = 0;
        for (int i = 0; i < known.Chain.Places.Count; i++)
        {
            RoutePlace place = known.Chain.Places[i];
            // Waits on the way to the next thing heard are past and not heard of: the plan's mean stands for them.
            bool isQueue = known.Chain.Queue >= 0 && i == known.Chain.Places.Count - 1;
            end += times.Of(g, place.Step, At(place)) + (isQueue ? 0 : scene.WaitAt(place));
            ends[i + 1] = end;
        }

        return known.At.IsUnheard ? run.Start(scene.WorkBegan, times, g) : known.At.Since ?? scene.Moment.Now;
    }

    private RouteState At(RoutePlace place)
    {
        probe.GoTo(place.Part);
        (probe.At, probe.Round) = (place.At, place.Round);
        return probe;
    }

    private void Take(int g, KnownGroup known, GroupStart start, double since, int attempt)
    {
        start.Draws = attempt == 0 ? null : KeyOf(attempt);
        attempts[g] = attempt;
        double lasted = scene.Moment.Now - since;
        if (lasted < 0)
        {
            start.BeginsAt = since;
            Places[g] = -1;
            return;
        }

        GroupChain chain = known.Chain;
        int i = 0;
        while (i < chain.Places.Count && ends[i + 1] <= lasted)
        {
            i++;
        }

        bool waits = chain.Queue >= 0 && i >= chain.Places.Count - 1;
        i = waits || (chain.IsHeard && i == chain.Places.Count) ? chain.Places.Count - 1 : i;
        PutAt(g, known, start, chain.From + i);
        if (i < chain.Places.Count)
        {
            start.Rounds = RoundsOf(g, known, chain.Places[i]);
            start.Rest = Math.Max(0, ends[i + 1] - lasted);
            arrived[g] = waits ? since + ends[i] : double.NaN;
            lasts[g] = ends[i + 1] - ends[i];
        }
    }

    private void PutAt(int g, KnownGroup known, GroupStart start, int place)
    {
        Places[g] = place;
        bool over = place >= known.Trial.Places.Count;
        RoutePart part = over ? RoutePart.After : known.Trial.Places[place].Part;
        if (part == RoutePart.After && known.Group.Condition.Weighs && start.Trial + 1 < scene.Plan.Trials)
        {
            // Another trial follows.
            (start.Part, start.At) = (RoutePart.TrialAfter, scene.Route.TrialAfter.Length);
            return;
        }

        (start.Part, start.At) = (part, over ? scene.Route.After.Length : known.Trial.Places[place].At);
        start.Round = over ? 0 : known.Trial.Places[place].Round;
    }

    /// <summary>How often the trial is heated: as the plan draws it, given that it is heated so often at least.</summary>
    private int RoundsOf(int g, KnownGroup known, RoutePlace place)
    {
        if (place.Part is not (RoutePart.TrialBefore or RoutePart.Heating))
        {
            return 0;
        }

        int least = place.Part == RoutePart.Heating ? place.Round + 1 : 1;
        for (int t = 0; t < MostDraws && reheats is not null; t++)
        {
            int rounds = reheats.Of(seed, KeyOf(t), g, 8 * (Math.Min(known.Group.Trial, scene.Plan.Trials) - 1));
            if (rounds >= least)
            {
                return rounds;
            }
        }

        return Math.Max(least, reheats is null ? scene.Plan.Heatings : least);
    }

    /// <summary>Serves those who have come to a balance, since it last became free, in the order in which they came. Who would have
    /// read by now has not, so that group is drawn anew, until nobody would have.</summary>
    private void Serve()
    {
        foreach (int queue in scene.Queues)
        {
            double[] free = frees[queue];
            while (FirstHeard(queue, free) is int g && g >= 0)
            {
                if (attempts[g] + 1 >= MostDraws)
                {
                    // It is overdue: it reads now.
                    lasts[g] = double.PositiveInfinity;
                    continue;
                }

                arrived[g] = double.NaN;
                int attempt = attempts[g] + 1;
                Take(g, scene.Groups[g], Start.Groups[g], Lay(g, scene.Groups[g], KeyOf(attempt)), attempt);
            }
        }
    }

    /// <summary>Serves a queue in the past.</summary>
    /// <returns>The first group that would have read by now; -1 where none would: then those being served have what is left of their
    /// time, and those who wait their whole time.</returns>
    private int FirstHeard(int queue, double[] free)
    {
        for (int i = 0; i < free.Length; i++)
        {
            free[i] = scene.FreedBefore(queue, i + 1);
        }

        Array.Clear(served);
        while (NextWaiting(queue) is int g && g >= 0)
        {
            served[g] = true;
            int first = Array.IndexOf(free, free.Min());
            double begins = Math.Max(arrived[g], free[first]);
            double ends = double.IsInfinity(lasts[g]) ? scene.Moment.Now : begins + lasts[g];
            if (begins <= scene.Moment.Now && ends <= scene.Moment.Now && !double.IsInfinity(lasts[g]))
            {
                return g;
            }

            Start.Groups[g].Rest = begins <= scene.Moment.Now ? ends - scene.Moment.Now : null;
            free[first] = ends;
        }

        return -1;
    }

    private int NextWaiting(int queue)
    {
        int first = -1;
        for (int g = 0; g < arrived.Length; g++)
        {
            bool waits = !served[g] && !double.IsNaN(arrived[g]) && scene.Groups[g].Chain.Queue == queue;
            first = waits && (first < 0 || arrived[g] < arrived[first]) ? g : first;
        }

        return first;
    }

    /// <summary>Those who hold something come first, then those who wait, by when they came, then all others.</summary>
    private void Line()
    {
        for (int g = 0; g < keys.Length; g++)
        {
            Start.Order[g] = g;
            keys[g] = Start.Groups[g].Rest is not null ? double.NegativeInfinity
                : double.IsNaN(arrived[g]) ? double.MaxValue : arrived[g];
        }

        for (int i = 1; i < keys.Length; i++)
        {
            for (int j = i; j > 0 && keys[Start.Order[j]] < keys[Start.Order[j - 1]]; j--)
            {
                (Start.Order[j], Start.Order[j - 1]) = (Start.Order[j - 1], Start.Order[j]);
            }
        }
    }
}
