namespace Calx.Practicals.Watching;

/// <summary>What was heard of a group after its last reading, and how far it brings the group.</summary>
internal sealed class Evidence
{
    private readonly TrialRoute trial;

    /// <summary>Weighs it.</summary>
    /// <param name="trial">The trial's route.</param>
    /// <param name="moments">What was heard.</param>
    /// <param name="last">The place of the last reading taken, or -1.</param>
    /// <param name="readAt">When it was received, or null.</param>
    public Evidence(TrialRoute trial, GroupMoments moments, int last, double? readAt)
    {
        this.trial = trial;
        Last = last;
        ReadAt = readAt;
        Place = Start;
        Since = readAt;
        double after = readAt ?? double.NegativeInfinity;
        double? lit = moments.FlameLit > after ? moments.FlameLit : null;
        // A flame that was lit again is not out.
        double? put = moments.FlameOut > after && !(lit > moments.FlameOut) ? moments.FlameOut : null;
        ToldStep? told = moments.Told?.Minute >= after ? moments.Told : null;
        foreach ((double minute, Func<bool> counts) in Heard(lit, put, told).OrderBy(h => h.Minute))
        {
            int before = Place;
            if (counts())
            {
                HasMore = true;
                // Who says that it is at a step has come to it then, even where a reading alone would have put it there before.
                Since = Place != before || Since is null || (minute == told?.Minute && trial.Find(Start, p => p.Does(told.StepId)) == Place) ? minute : Since;
            }
        }
    }

    /// <summary>Place of the last reading taken, or -1.</summary>
    public int Last { get; }

    /// <summary>When it was received, or null.</summary>
    public double? ReadAt { get; }

    /// <summary>The place behind it.</summary>
    public int Start => Last + 1;

    /// <summary>How far the group is.</summary>
    public int Place { get; private set; }

    /// <summary>Since when it is there, or null where nothing was heard.</summary>
    public double? Since { get; private set; }

    /// <summary>Whether anything was heard after the reading that brings the group on.</summary>
    public bool HasMore { get; private set; }

    /// <summary>When the flame was put out that nothing has been weighed after, or null.</summary>
    public double? FlameOut { get; private set; }

    /// <summary>Where what was heated cools, or -1.</summary>
    public int Cooling { get; private set; } = -1;

    /// <summary>Whether nothing at all was heard of the group.</summary>
    public bool IsNothing => Last < 0 && !HasMore;

    private IEnumerable<(double Minute, Func<bool> Counts)> Heard(double? lit, double? put, ToldStep? told)
    {
        if (told is not null)
        {
            yield return (told.Minute, () => Tell(told));
        }

        if (lit is double began)
        {
            yield return (began, Light);
        }

        if (put is double ended)
        {
            yield return (ended, () => PutOut(ended));
        }
    }

    /// <summary>The first place from the reading on where that is done; a step that lies behind says nothing.</summary>
    private bool Tell(ToldStep told)
    {
        int place = trial.Find(Start, p => p.Does(told.StepId));
        int flame = trial.FlameFrom(Start);
        Place = Math.Max(Place, place);
        if (FlameOut is null && flame >= 0 && place >= trial.BehindFlame(flame))
        {
            // A group that says it is past its flame has put it out by then.
            (Cooling, FlameOut) = (trial.BehindFlame(flame), told.Minute);
        }

        return place >= 0;
    }

    private bool Light()
    {
        int flame = trial.FlameFrom(Start);
        bool burnsAlready = Place < trial.Places.Count && trial.Places[Place].Step.Flame;
        Place = flame >= 0 && !burnsAlready ? flame : Place;
        (FlameOut, Cooling) = (null, -1);
        return flame >= 0;
    }

    private bool PutOut(double minute)
    {
        int flame = trial.FlameFrom(Start);
        if (flame >= 0)
        {
            (Cooling, FlameOut) = (trial.BehindFlame(flame), minute);
            Place = Math.Max(Place, Cooling);
        }

        return flame >= 0;
    }
}
