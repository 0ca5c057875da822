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

    /// <summary>Draws the steps since the last thing heard until the next has not come yet.</summary>
    private void Walk(int g, KnownGroup known, GroupStart start)
    {
        GroupChain chain = known.Chain;
        bool crowded = scene.IsCrowded(chain.Queue);
        double bestKey = 0;
        double best = double.NegativeInfinity;
        for (int t = 0; t < MostDraws; t++)
        {
            double since = Lay(g, known, KeyOf(t));
            double heard = since + ends[chain.Places.Count];
            // Where others wait for the same balance too, a group may have come to it long ago.
            if (since > scene.Moment.Now || !chain.IsHeard || crowded || heard > scene.Moment.Now)
            {
                Take(g, known, start, since, t);
                return;
            }

            (best, bestKey) = heard > best ? (heard, t) : (best, bestKey);
        }

        Take(g, known, start, Lay(g, known, KeyOf((int)bestKey)), (int)bestKey);
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
            end += times.Of(g, known.Chain.Places[i].Step, At(known.Chain.Places[i]));
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

    /// <summary>Of those at a balance, as many as there are balances have begun, those first who came first; the rest of their time
    /// is drawn given how long it has lasted.</summary>
    private void Serve()
    {
        foreach (int queue in scene.Queues)
        {
            int served = 0;
            int units = scene.UnitsOf(queue);
            while (served < units && FirstWaiting(queue) is int g && g >= 0)
            {
                if (scene.IsCrowded(queue))
                {
                    // When the balance last became free, or when it came.
                    Begun(g, Math.Max(arrived[g], scene.FreedBefore(queue, units - served)));
                }

                arrived[g] = double.NaN;
                served++;
            }
        }

        for (int g = 0; g < arrived.Length; g++)
        {
            // Whoever waits takes its whole time once it is its turn.
            Start.Groups[g].Rest = double.IsNaN(arrived[g]) ? Start.Groups[g].Rest : null;
        }
    }

    private void Begun(int g, double began)
    {
        RoutePlace place = scene.Groups[g].Chain.Places[^1];
        GroupStart start = Start.Groups[g];
        times.Begin(seed, start.Draws ?? lesson);
        (probe.Trial, probe.Rounds) = (start.Trial, start.Rounds);
        start.Rest = times.Rest(g, place.Step, At(place), Math.Max(0, scene.Moment.Now - began));
    }

    private int FirstWaiting(int queue)
    {
        int first = -1;
        for (int g = 0; g < arrived.Length; g++)
        {
            bool waits = !double.IsNaN(arrived[g]) && scene.Groups[g].Chain.Queue == queue;
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
            keys[g] = !double.IsNaN(arrived[g]) ? arrived[g]
                : Start.Groups[g].Rest is not null ? double.NegativeInfinity : double.MaxValue;
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
