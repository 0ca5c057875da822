using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>What holds in every lesson, whatever chance does.</summary>
public sealed class LessonLawsTests
{
    private static PlanSettings Full(int groups = 12, int balances = 2) => new(Given.Magnesium, groups, Given.Balances(balances), 150);

    [Fact]
    public void The_same_seed_is_the_same_lesson_on_any_number_of_threads()
    {
        LessonForecast one = Given.Forecast(Full(), 400, threads: 1);
        LessonForecast four = Given.Forecast(Full(), 400, threads: 4);
        Assert.Equal((one.P10, one.P50, one.P90, one.Fits, one.Calls), (four.P10, four.P50, four.P90, four.Fits, four.Calls));
        Assert.Equal(one.Uses, four.Uses);
        Assert.Equal(one.Bad.Bars, four.Bad.Bars);
        Assert.NotEqual(one.P50, Given.Forecast(Full(), 400, seed: 2).P50);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(15, 1)]
    [InlineData(18, 3)]
    public void Nobody_is_in_two_places_and_never_more_weigh_than_there_are_balances(int groups, int balances)
    {
        LessonForecast forecast = Given.Forecast(Full(groups, balances), 200);
        foreach (LessonTimeline lesson in (LessonTimeline[])[forecast.Typical, forecast.Bad])
        {
            for (int group = 1; group <= groups; group++)
            {
                TimelineBar[] bars = [.. lesson.Bars.Where(b => b.Group == group)];
                Assert.Equal(bars.Length - 1, bars.Zip(bars[1..]).Count(pair => pair.First.ToMinute <= pair.Second.FromMinute + 1e-9));
                Assert.Equal("exit-talk", bars[^1].StepId);
            }

            TimelineBar[] weighings = [.. lesson.Bars.Where(b => b.Kind == BarKind.Weighing)];
            Assert.True(weighings.Length >= 4 * groups, "every group weighs empty, before, and after at least two heatings");
            Assert.All(weighings, bar => Assert.InRange(weighings.Count(b => b.FromMinute <= bar.FromMinute && b.ToMinute > bar.FromMinute), 1, balances));
        }
    }

    [Fact]
    public void Little_s_law_holds_in_every_lesson()
    {
        PlanSettings settings = Full(15, 1);
        var tables = new PlanTables(Given.Weights);
        var route = new LessonRoute(settings, tables.Durations);
        var run = new LessonRun(settings, route, new LessonRules(0.04, 2, 60), new ReheatDraws(tables.DrawersOf(settings), settings.Heatings));
        for (int lesson = 0; lesson < 200; lesson++)
        {
            run.Run(9, lesson);
            Assert.All(run.Shared, use =>
            {
                Assert.Equal(use.QueueMinutes, use.WaitedMinutes, 1e-7);
                Assert.InRange(use.MostInUse, 1, use.Units);
            });
        }
    }

    [Fact]
    public void Taking_every_step_by_itself_changes_no_time()
    {
        PlanSettings settings = Full();
        var tables = new PlanTables(Given.Weights);
        var route = new LessonRoute(settings, tables.Durations);
        var rules = new LessonRules(0.04, 2, 60);
        var quick = new LessonRun(settings, route, rules, new ReheatDraws(tables.DrawersOf(settings), settings.Heatings));
        var slow = new LessonRun(settings, route, rules, new ReheatDraws(tables.DrawersOf(settings), settings.Heatings), []);
        for (int lesson = 0; lesson < 100; lesson++)
        {
            LessonOutcome a = quick.Run(3, lesson);
            LessonOutcome b = slow.Run(3, lesson);
            Assert.Equal((a.Joined, a.Heatings), (b.Joined, b.Heatings));
            Assert.Equal(a.End, b.End, 1e-9);
            Assert.Equal(a.FlameOut, b.FlameOut, 1e-9);
            Assert.Equal(a.Weighed, b.Weighed, 1e-9);
        }
    }

    [Fact]
    public void More_balances_never_make_the_queue_longer_and_a_shorter_lesson_never_fits_better()
    {
        double[] waits = [.. Enumerable.Range(1, 4).Select(n => Given.Forecast(Full(15, n), 300).Uses.FirstOrDefault(u => u.Thing.Id == "balance")?.MeanWait ?? 0)];
        Assert.Equal(waits.OrderDescending(), waits);
        Assert.True(waits[0] > 3 * waits[1]);
        double[] fits = [.. new[] { 100.0, 130, 145, 180 }.Select(m => Given.Forecast(Full().WithMinutes(m), 300).Fits.Value)];
        Assert.Equal(fits.Order(), fits);
        Assert.True(fits[0] < 0.05 && fits[^1] > 0.9, string.Join(' ', fits));
    }

    [Fact]
    public void A_group_whose_mass_still_changes_heats_again_and_a_broken_vessel_starts_again_or_joins()
    {
        LessonForecast full = Given.Forecast(Full(), 500);
        Assert.InRange(full.MeanHeatings, 2.05, 2.6);
        Assert.Equal(1, Given.Forecast(Full().WithHeatings(1), 200).MeanHeatings, 0.1);
        // With no time to start again every broken vessel, 4 in 100, means joining; with much time nearly none does.
        Assert.Equal(0.04, Given.Forecast(Full().WithMinutes(60), 500).JoinedShare, 0.011);
        Assert.True(Given.Forecast(Full().WithMinutes(400), 500).JoinedShare < 0.005);
    }

    [Fact]
    public void Fewer_burners_than_groups_are_waited_for()
    {
        LessonForecast few = Given.Forecast(Full().WithKit("burner", 4), 200);
        ThingUse burners = few.Uses.Single(u => u.Thing.Id == "burner");
        Assert.Equal((4, true), (burners.Thing.Units, burners.MeanWait > 10));
        Assert.Equal("burner", few.Bottleneck.Id);
        Assert.DoesNotContain(Given.Forecast(Full(), 200).Uses, u => u.Thing.Id == "burner");
    }

    /// <summary>Of groups that begin a reheat in the two minutes before the call nine in ten are in time; of those that begin ten
    /// minutes after it far fewer. Counted on lessons that the call was not reckoned from.</summary>
    [Fact]
    public void Who_begins_by_the_last_call_is_done_in_time_nine_times_in_ten()
    {
        PlanSettings settings = Full().WithMinutes(135);
        double call = Given.Forecast(settings, 600).Calls.Reheat!.Value;
        var tables = new PlanTables(Given.Weights);
        var run = new LessonRun(
            settings, new LessonRoute(settings, tables.Durations), LessonRules.Unbroken, new ReheatDraws(tables.DrawersOf(settings), settings.Heatings));
        (int By, int InTime) before = (0, 0);
        (int By, int InTime) after = (0, 0);
        for (int lesson = 0; lesson < 1500; lesson++)
        {
            LessonOutcome outcome = run.Run(61, lesson);
            double talk = outcome.End - run.Minutes.Max(m => m.Ready);
            foreach (GroupMinutes group in run.Minutes)
            {
                bool inTime = group.Ready + talk <= settings.Minutes && group.ReheatEnded <= settings.Minutes - 15;
                if (group.ReheatBegan > call - 2 && group.ReheatBegan <= call)
                {
                    before = (before.By + 1, before.InTime + (inTime ? 1 : 0));
                }
                else if (group.ReheatBegan > call + 8 && group.ReheatBegan <= call + 12)
                {
                    after = (after.By + 1, after.InTime + (inTime ? 1 : 0));
                }
            }
        }

        Assert.True(before.By > 200 && after.By > 50, $"{before} {after}");
        Assert.InRange((double)before.InTime / before.By, 0.85, 0.97);
        Assert.True((double)after.InTime / after.By < 0.6, $"{after}");
    }
}
