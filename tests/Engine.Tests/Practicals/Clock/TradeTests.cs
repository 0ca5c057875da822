using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>What teachers know of such lessons. Common practice, no source: the lesson has to agree within its spread.</summary>
public sealed class TradeTests
{
    /// <summary>A whole class that comes to the balance within three minutes and weighs once, 25 to 120 s, likeliest 45 s. The
    /// minutes are those of a triangular law that somebody reckoned for a teachers' file; common practice, no source.</summary>
    [Theory]
    [InlineData(8, 1, 8.9)]
    [InlineData(10, 1, 11.0)]
    [InlineData(15, 1, 16.2)]
    [InlineData(15, 2, 8.7)]
    public void A_round_of_weighing_takes_as_long_as_teachers_say(int groups, int balances, double lastDone)
    {
        PlanSettings settings = new PlanSettings(
            Given.WithSteps("""
                  - { id: come, label: come, minutes: [0, 1.5, 3], kit: {}, standing: judgement }
                  - { id: weigh-empty, label: weigh, minutes: [0.417, 0.75, 2], kit: { balance: 1 }, reading: empty, standing: judgement }
                """),
            groups,
            Given.Balances(balances),
            60);
        LessonForecast lesson = Given.Forecast(settings, 600);
        // The PERT law has less weight at its long end than the triangular one: a mean of 0.90 min for 1.06.
        Assert.InRange(lesson.P50, lastDone * 0.78, lastDone * 1.02);
    }

    /// <summary>The full practical with the vessel fired and one reheat takes one group about 100 min, from 94 in one lesson of ten
    /// to 107 in nine: common practice, no source. Working out the ratio is in our lesson and not in theirs.</summary>
    [Fact]
    public void The_full_practical_takes_one_group_about_a_hundred_minutes()
    {
        PlanSettings settings = new PlanSettings(Given.Magnesium, 1, [Given.Centigram], 120).WithMoved("work-out");
        LessonForecast lesson = Given.Forecast(settings, 1000, decided: false);
        Assert.InRange(lesson.P50, 94, 107);
        Assert.True(lesson.P10 < 100 && lesson.P90 > 100, $"{lesson.P10} to {lesson.P90}");
    }

    [Fact]
    public void Three_weighings_of_fifteen_groups_on_one_balance_fill_the_hour()
    {
        PlanSettings settings = new PlanSettings(Given.Magnesium, 15, [Given.Centigram], 60).WithHeatings(1);
        ThingUse balance = Given.Forecast(settings, 300).Uses.Single(u => u.Thing.Id == "balance");
        // 45 weighings of 0.9 min: 40 min of balance time, whatever the order.
        double end = Given.Forecast(settings, 300).P50;
        Assert.InRange(balance.Use * end, 36, 46);
    }
}
