using Calx.Practicals.Clock;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Clock;

public sealed class EventQueueTests
{
    /// <summary>The slow obvious version: a list sorted by minute, priority and order of coming.</summary>
    [Fact]
    public void Events_come_by_minute_then_priority_then_the_order_in_which_they_were_put_in()
    {
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 1]).Array[1, 60].Always(
            events =>
            {
                var queue = new EventQueue(1);
                for (int i = 0; i < events.Length; i++)
                {
                    queue.Add(events[i].Item1, events[i].Item2, i);
                }

                int[] expected = [.. Enumerable.Range(0, events.Length).OrderBy(i => events[i].Item1).ThenBy(i => events[i].Item2).ThenBy(i => i)];
                Assert.Equal(expected, Enumerable.Range(0, events.Length).Select(_ => queue.Next().Person));
                Assert.Equal(0, queue.Count);
            },
            iter: 500);
    }

    [Fact]
    public void An_empty_queue_has_nothing_to_give() => Assert.Throws<InvalidOperationException>(() => new EventQueue(3).Next());

    /// <summary>Two who come in the same minute are served in their order, and who gives back comes before who asks.</summary>
    [Fact]
    public void In_one_minute_what_is_given_back_can_be_taken()
    {
        var trace = new List<WorkSpan>();
        var simulation = new WorkSimulation([1], [[new Need(0, 1)]], 3) { Trace = trace };
        int[] stage = new int[3];
        // 0 holds it from 0 to 5; 1 and 2 come at 5: 1 takes it at once, 2 waits for it.
        double end = simulation.Run((person, _) => (person, stage[person]++) switch
        {
            (0, 0) => Activity.Work(5, need: 0),
            (_, 0) => Activity.Work(5),
            (not 0, 1) => Activity.Work(2, need: 0),
            _ => Activity.Done,
        });
        Assert.Equal(9, end);
        Assert.Equal([(0, 0.0, 0.0), (1, 5.0, 5.0), (2, 5.0, 7.0)], trace.Where(s => s.Need == 0).Select(s => (s.Person, s.Asked, s.Began)));
    }

    /// <summary>By hand: A needs two at once and waits for them; B, who comes later and needs one, does not overtake A, though one is
    /// free; C, who wants something else, does.</summary>
    [Fact]
    public void Nobody_is_overtaken_by_one_who_wants_the_same()
    {
        var trace = new List<WorkSpan>();
        var simulation = new WorkSimulation([2, 1], [[new Need(0, 1)], [new Need(0, 2)], [new Need(1, 1)]], 4) { Trace = trace };
        int[] stage = new int[4];
        simulation.Run((person, _) => (person, stage[person]++) switch
        {
            (0, 0) => Activity.Work(10, need: 0, tag: 0),
            (1, 0) => Activity.Work(1),
            (1, 1) => Activity.Work(3, need: 1, tag: 1),
            (2, 0) => Activity.Work(2),
            (2, 1) => Activity.Work(4, need: 0, tag: 2),
            (3, 0) => Activity.Work(3),
            (3, 1) => Activity.Work(1, need: 2, tag: 3),
            _ => Activity.Done,
        });
        double Began(int tag) => trace.Single(s => s.Tag == tag).Began;
        Assert.Equal((0.0, 10.0, 13.0, 3.0), (Began(0), Began(1), Began(2), Began(3)));
        Assert.Equal((9.0 + 11.0, 2), (simulation.Shared[0].WaitedMinutes, simulation.Shared[0].MostInUse));
    }

    [Fact]
    public void Who_needs_the_same_next_keeps_it_and_all_wait_for_the_last()
    {
        var trace = new List<WorkSpan>();
        var simulation = new WorkSimulation([1], [[new Need(0, 1)]], 2) { Trace = trace };
        int[] stage = new int[2];
        double end = simulation.Run((person, _) => stage[person]++ switch
        {
            0 => Activity.Work(3, need: 0, tag: 1),
            1 => Activity.Work(2, need: 0, tag: 2),
            2 => Activity.Together(4, tag: 3),
            _ => Activity.Done,
        });
        // 0 keeps it for five minutes, then 1; both talk from 10 to 14.
        Assert.Equal(14, end);
        Assert.Equal([(0, 0.0), (1, 5.0)], trace.Where(s => s.Tag == 1).Select(s => (s.Person, s.Began)).Order());
        Assert.All(trace.Where(s => s.Tag == 3), s => Assert.Equal((10.0, 14.0), (s.Began, s.Ended)));
    }

    [Fact]
    public void What_can_never_be_had_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WorkSimulation([1], [[new Need(0, 2)]], 1));
}
