namespace Calx.Practicals.Clock;

/// <summary>
/// A discrete-event simulation of people who work side by side and share things: each does one activity after another; one
/// that needs shared things waits, first come first served, until all of them are free together. Whoever needs the same
/// things for the next activity keeps them. One simulation is used for run after run, by one thread at a time
/// (docs/methods/lesson-clock.md).
/// </summary>
internal sealed class WorkSimulation
{
    private readonly Need[][] needs;
    private readonly SharedUse[] shared;
    private readonly EventQueue events;
    private readonly Activity[] current;
    private readonly double[] asked;
    private readonly int[] behind;
    private int first;
    private int last;
    private int atWork;
    private int gathered;
    private double minute;

    /// <summary>Sets it up.</summary>
    /// <param name="units">How many there are of each shared thing, from 1.</param>
    /// <param name="needs">What activities may need: each a list of shared things, no more than there are.</param>
    /// <param name="people">How many people, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nobody works, or a need can never be met.</exception>
    public WorkSimulation(IReadOnlyList<int> units, IReadOnlyList<IReadOnlyList<Need>> needs, int people)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(people, 1);
        foreach (Need need in needs.SelectMany(n => n))
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(need.Units, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(need.Units, units[need.Resource]);
        }

        this.needs = [.. needs.Select(n => n.ToArray())];
        shared = [.. units.Select(u => new SharedUse(u))];
        events = new EventQueue(people);
        current = new Activity[people];
        asked = new double[people];
        behind = new int[people];
        EndOf = new double[people];
    }

    /// <summary>How each shared thing was used in the last run.</summary>
    public IReadOnlyList<SharedUse> Shared => shared;

    /// <summary>When each person was done in the last run.</summary>
    public double[] EndOf { get; }

    /// <summary>Where activities are noted as they end, or null.</summary>
    public List<WorkSpan>? Trace { get; set; }

    /// <summary>Runs until everybody is done.</summary>
    /// <param name="next">What each does next; asked first at the first minute.</param>
    /// <param name="from">The first minute.</param>
    /// <param name="order">All people, those first who take shared things first; null for the order of their numbers.</param>
    /// <returns>When the last was done.</returns>
    public double Run(NextActivity next, double from = 0, IReadOnlyList<int>? order = null)
    {
        events.Clear();
        foreach (SharedUse use in shared)
        {
            use.Clear();
        }

        (first, last, gathered, atWork, minute) = (-1, -1, 0, current.Length, from);
        for (int i = 0; i < current.Length; i++)
        {
            int person = order is null ? i : order[i];
            Begin(person, next(person, from));
        }

        while (events.Count > 0)
        {
            (minute, int person) = events.Next();
            GoOn(person, next);
        }

        return atWork == 0 ? minute : throw new InvalidOperationException("Somebody waits for what nobody will give back.");
    }

    private void GoOn(int person, NextActivity next)
    {
        Activity ended = current[person];
        Trace?.Add(new WorkSpan(person, ended.Tag, asked[person], minute - ended.Minutes, minute, ended.Need));
        Activity following = next(person, minute);
        if (ended.Need >= 0 && following.Kind == ActivityKind.Work && following.Need == ended.Need)
        {
            Keep(person, following);
            return;
        }

        if (ended.Need >= 0)
        {
            foreach (Need need in needs[ended.Need])
            {
                shared[need.Resource].GiveBack(need.Units);
            }

            // Whoever has waited goes first, before this person may ask anew.
            LetIn();
        }

        Begin(person, following);
    }

    private void Begin(int person, Activity activity)
    {
        current[person] = activity;
        asked[person] = minute;
        switch (activity.Kind)
        {
            case ActivityKind.Done:
                EndOf[person] = minute;
                atWork--;
                LetTogether();
                break;
            case ActivityKind.Together:
                gathered++;
                LetTogether();
                break;
            default:
                if (activity.Need < 0)
                {
                    events.Add(minute + activity.Minutes, 1, person);
                }
                else if (IsFree(activity.Need) && !IsAwaited(activity.Need))
                {
                    Take(person, wasQueued: false);
                }
                else
                {
                    Wait(person);
                }

                break;
        }
    }

    private void Keep(int person, Activity activity)
    {
        current[person] = activity;
        asked[person] = minute;
        foreach (Need need in needs[activity.Need])
        {
            shared[need.Resource].Keep(need.Units, activity.Minutes);
        }

        events.Add(minute + activity.Minutes, 0, person);
    }

    /// <summary>What gives something back comes before other things of the same minute.</summary>
    private void Take(int person, bool wasQueued)
    {
        Activity activity = current[person];
        foreach (Need need in needs[activity.Need])
        {
            shared[need.Resource].Take(need.Units, minute, minute - asked[person], wasQueued, activity.Minutes);
        }

        events.Add(minute + activity.Minutes, 0, person);
    }

    private void Wait(int person)
    {
        behind[person] = -1;
        if (first < 0)
        {
            first = person;
        }
        else
        {
            behind[last] = person;
        }

        last = person;
        foreach (Need need in needs[current[person].Need])
        {
            shared[need.Resource].Queue(minute);
        }
    }

    private bool IsFree(int need)
    {
        foreach (Need part in needs[need])
        {
            if (shared[part.Resource].Free < part.Units)
            {
                return false;
            }
        }

        return true;
    }

    private bool IsAwaited(int need)
    {
        foreach (Need part in needs[need])
        {
            if (shared[part.Resource].Waiting > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Lets in those who waited, in their order. Whoever cannot be served keeps what he waits for from all behind:
    /// nobody is overtaken by one who wants the same.</summary>
    private void LetIn()
    {
        ulong blocked = 0;
        ulong all = shared.Length >= 64 ? ulong.MaxValue : (1UL << shared.Length) - 1;
        int before = -1;
        for (int person = first; person >= 0 && blocked != all;)
        {
            int after = behind[person];
            ulong wanted = Wanted(current[person].Need);
            if ((wanted & blocked) == 0 && IsFree(current[person].Need))
            {
                Unlink(person, before, after);
                Take(person, wasQueued: true);
            }
            else
            {
                blocked |= wanted;
                before = person;
            }

            person = after;
        }
    }

    private ulong Wanted(int need)
    {
        ulong wanted = 0;
        foreach (Need part in needs[need])
        {
            wanted |= 1UL << part.Resource;
        }

        return wanted;
    }

    private void Unlink(int person, int before, int after)
    {
        if (before < 0)
        {
            first = after;
        }
        else
        {
            behind[before] = after;
        }

        last = last == person ? before : last;
    }

    /// <summary>Once everybody still at work has come, all go on together.</summary>
    private void LetTogether()
    {
        if (gathered == 0 || gathered < atWork)
        {
            return;
        }

        gathered = 0;
        for (int person = 0; person < current.Length; person++)
        {
            if (current[person].Kind == ActivityKind.Together)
            {
                events.Add(minute + current[person].Minutes, 1, person);
            }
        }
    }
}
