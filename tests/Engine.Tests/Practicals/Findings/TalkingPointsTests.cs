using System.Text.RegularExpressions;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

// Invented classes; what is to be talked about follows from how they were made.
public partial class TalkingPointsTests
{
    private static readonly (string, string)[] Lidless = [("empty", "31.02"), ("before", "31.26"), ("after", "19.35")];

    // Twelve coins falling alike: 2 · 2⁻¹² = 0.0005 by chance, less than once in 1000 rounded down to no thousandth at all.
    [Fact]
    public void Twelve_groups_of_one_mind_are_compared_with_tossed_coins()
    {
        string shown = Text(Analyse(DrawnClass.Of(groups: 12, reacted: 1, seed: 7)), TalkingTopic.Shown);

        Assert.Contains("The mass rose in all 12 groups.", shown, StringComparison.Ordinal);
        Assert.Contains("less than once in 1000 classes", shown, StringComparison.Ordinal);
        Assert.Contains("what does it leave open about the reason?", shown, StringComparison.Ordinal);
    }

    // Seven of eight: 2 · (1 + 8) · 2⁻⁸ = 0.0703, which does not leave chance out.
    [Fact]
    public void Where_chance_could_do_it_the_question_is_what_would_leave_it_out()
    {
        string shown = Text(Analyse([.. DrawnClass.Of(groups: 7, reacted: 1, seed: 12), Given.Group("lidless", Lidless)]), TalkingTopic.Shown);

        Assert.Contains("about 70 times in 1000 classes", shown, StringComparison.Ordinal);
        Assert.EndsWith("before it could leave chance out?", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_that_shares_a_fault_talks_about_bias_and_not_about_more_groups()
    {
        IReadOnlyList<TalkingPoint> points = Analyse(DrawnClass.Of(groups: 12, reacted: 0.8, seed: 4));

        Assert.Contains("more than chance explains", Text(points, TalkingTopic.Bias), StringComparison.Ordinal);
        Assert.Contains("more groups would only make the class surer of the same value", Text(points, TalkingTopic.NextTime), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_class_is_told_how_large_a_pull_could_hide_in_it()
    {
        ClassFindings found = Findings(DrawnClass.Of(groups: 12, reacted: 1, seed: 3));
        string bias = Text(TalkingPoints.Of(found), TalkingTopic.Bias);

        ClassQuantity ratio = found.Class.Find("moleRatio")!;
        Match half = Hidden().Match(bias);
        Assert.Contains("which chance explains", bias, StringComparison.Ordinal);
        Assert.Equal((ratio.Interval.High - ratio.Interval.Low) / 2, double.Parse(half.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 0.006);
    }

    // Standard uncertainty goes with one over the root of the number of groups: half of it takes four times as many.
    [Fact]
    public void Half_the_uncertainty_takes_four_times_as_many_groups_or_a_sample_within_the_limits()
    {
        string next = Text(Analyse(DrawnClass.Of(groups: 10, reacted: 1, seed: 3)), TalkingTopic.NextTime);
        Assert.Contains("about 40 groups instead of 10", next, StringComparison.Ordinal);

        // Samples of 0.20 to 0.28 g; nobody may burn more than 0.30 g.
        Assert.Contains("twice as large is more than this practical allows", next, StringComparison.Ordinal);
    }

    [Fact]
    public void Small_samples_may_be_doubled_next_time()
    {
        GroupReadings[] groups = [.. Enumerable.Range(0, 8).Select(i => Given.Group($"{i + 1}", ("empty", "30.00"), ("before", "30.12"), ("after", "30.20")))];

        Assert.Contains("a sample twice as large, which the limits of this practical allow", Text(Analyse(groups), TalkingTopic.NextTime), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_empty_vessel_the_class_is_asked_which_weighing_it_would_need()
    {
        GroupReadings[] groups =
            [.. DrawnClass.Of(groups: 8, reacted: 1, seed: 8).Select(g => new GroupReadings(g.Name, null, [.. g.Readings.Where(r => r.BaseId != "empty")]))];
        IReadOnlyList<TalkingPoint> points = Analyse(groups);

        Assert.DoesNotContain(points, p => p.Topic is TalkingTopic.Strength or TalkingTopic.Bias);
        Assert.Contains("Which weighing would you need", Text(points, TalkingTopic.Limit), StringComparison.Ordinal);
        Assert.Contains("'Mass of empty crucible and lid'", Text(points, TalkingTopic.NextTime), StringComparison.Ordinal);
    }

    [Fact]
    public void Equations_between_which_the_value_does_not_decide_are_what_it_cannot_show()
    {
        // 0.06 g at 0.01 g: the residue fraction 0.50 is uncertain by about a third of itself.
        GroupReadings[] open = [Given.Group("1", ("empty", "30.00"), ("before", "30.06"), ("after", "30.03"))];
        ClassFindings found = ClassAnalysis.Of(Given.Hydrogencarbonate, Given.Class(Given.Hydrogencarbonate, open), Given.Weights, Given.NoCauses);

        Assert.Contains("does not decide between", Text(TalkingPoints.Of(found), TalkingTopic.Limit), StringComparison.Ordinal);
    }

    [Fact]
    public void One_group_is_asked_about_a_second_and_about_a_second_heating()
    {
        IReadOnlyList<TalkingPoint> points = Analyse(DrawnClass.Of(groups: 1, reacted: 1, seed: 9));

        Assert.EndsWith("What would a second group have to find before you believed it?", Text(points, TalkingTopic.Shown), StringComparison.Ordinal);
        Assert.Contains("One group found", Text(points, TalkingTopic.Strength), StringComparison.Ordinal);
        Assert.Contains("What could a second heating and weighing have told you", Text(points, TalkingTopic.Limit), StringComparison.Ordinal);
    }

    [Fact]
    public void No_odd_result_no_point_about_one()
    {
        Assert.DoesNotContain(Analyse(DrawnClass.Of(groups: 12, reacted: 1, seed: 3)), p => p.Topic == TalkingTopic.OddResult || p.MentionsOdd);
    }

    [Fact]
    public void An_odd_result_is_named_with_a_question_that_does_not_give_its_cause_away()
    {
        GroupReadings[] groups =
        [
            .. DrawnClass.Of(groups: 11, reacted: 1, seed: 5), Given.Group("lidless", Lidless),
        ];
        ClassFindings found = ClassAnalysis.Of(Given.Magnesium, Given.Class(Given.Magnesium, groups), Given.Weights);
        TalkingPoint odd = Assert.Single(TalkingPoints.Of(found), p => p.Topic == TalkingTopic.OddResult);

        Assert.True(odd.MentionsOdd);
        Assert.StartsWith("Result to look into: lidless.", odd.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("lidless", odd.WithoutNames, StringComparison.Ordinal);
        Assert.EndsWith("?", odd.Text.TrimEnd('.'), StringComparison.Ordinal);
        Assert.DoesNotContain(" lid ", odd.Text, StringComparison.Ordinal);
        Assert.All(Given.Magnesium.Faults, f => Assert.DoesNotContain(f.Label, odd.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_several_odd_results_the_clearest_is_talked_about_and_the_others_are_counted()
    {
        GroupReadings[] groups =
        [
            .. DrawnClass.Of(groups: 9, reacted: 1, seed: 5),
            Given.Group("far", ("empty", "31.02"), ("before", "31.26"), ("after", "31.33")), Given.Group("lidless", Lidless),
        ];
        ClassFindings found = ClassAnalysis.Of(Given.Magnesium, Given.Class(Given.Magnesium, groups), Given.Weights);
        GroupFindings clearest = found.Groups.Where(g => g.IsAnomalous).MaxBy(g => g.Diagnosis!.First.Probability)!;

        string odd = Text(TalkingPoints.Of(found), TalkingTopic.OddResult);

        Assert.StartsWith($"Result to look into: {clearest.Name}. It and 1 more", odd, StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_three_to_six_points_each_with_a_question_in_words_of_measurement()
    {
        foreach (int seed in Enumerable.Range(20, 12))
        {
            IReadOnlyList<TalkingPoint> points = Analyse(DrawnClass.Of(groups: 1 + seed % 12, reacted: 0.9, (ulong)seed));

            Assert.InRange(points.Count, 3, 6);
            Assert.All(points, p => Assert.Contains("?", p.Text, StringComparison.Ordinal));
            string all = string.Join(' ', points.Select(p => p.Text));
            foreach (string banned in (string[])["reliable", "human error", "very accurate", "weight ", "NaN", "Infinity", "−0.0"])
            {
                Assert.DoesNotContain(banned, all, StringComparison.OrdinalIgnoreCase);
            }
        }
    }

    [Fact]
    public void Only_the_point_about_bias_tells_the_accepted_value()
    {
        IReadOnlyList<TalkingPoint> points = Analyse(DrawnClass.Of(groups: 12, reacted: 1, seed: 3));

        Assert.All(points.Where(p => !p.TellsAccepted), p => Assert.DoesNotContain("accepted", p.Text, StringComparison.Ordinal));
        Assert.Contains(points, p => p.TellsAccepted);
    }

    private static string Text(IReadOnlyList<TalkingPoint> points, TalkingTopic topic) => Assert.Single(points, p => p.Topic == topic).Text;

    private static IReadOnlyList<TalkingPoint> Analyse(IEnumerable<GroupReadings> groups) => TalkingPoints.Of(Findings(groups));

    private static ClassFindings Findings(IEnumerable<GroupReadings> groups) =>
        ClassAnalysis.Of(Given.Magnesium, Given.Class(Given.Magnesium, [.. groups]), Given.Weights, Given.NoCauses);

    [GeneratedRegex(@"less than about ([0-9.]+) would not")]
    private static partial Regex Hidden();
}
