using Calx.Chemistry.Amounts;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>More groups that agree never make a class less sure.</summary>
public sealed class FewGroupsTests
{
    /// <summary>Good groups of a two-decimal balance: the probability of the right formula, averaged over the same forty classes of
    /// which 1, 2, 4 and 8 groups have typed, does not fall, and nor does the share that single it out.</summary>
    [Fact]
    public void The_right_formula_gets_no_less_probable_from_one_group_to_eight()
    {
        const int Classes = 40;
        int[] sizes = [1, 2, 4, 8];
        double[] probability = new double[sizes.Length];
        int[] singled = new int[sizes.Length];
        for (int c = 0; c < Classes; c++)
        {
            GroupReadings[] groups = [.. DrawnClass.Of(groups: 8, reacted: 1, seed: 100 + (ulong)c)];
            for (int s = 0; s < sizes.Length; s++)
            {
                var ranked = Assert.IsType<FormulaRanking.Ranked>(Analyse(groups[..sizes[s]]).Class.Formula);
                FormulaCandidate first = ranked.Candidates.Single(f => f.Formula.ToString() == "MgO");
                probability[s] += first.Probability / Classes;
                singled[s] += first.Probability > 0.9 ? 1 : 0;
            }
        }

        for (int s = 1; s < sizes.Length; s++)
        {
            Assert.True(probability[s] > probability[s - 1], $"{sizes[s]} groups: {probability[s]:F3} after {probability[s - 1]:F3}");
            Assert.True(singled[s] >= singled[s - 1], $"{sizes[s]} groups: {singled[s]} after {singled[s - 1]}");
        }

        Assert.True(probability[1] > 0.8 && probability[^1] > 0.97, $"{string.Join(" ", probability)}; {string.Join(" ", singled)}");
    }

    // Two groups that agree: with a spread taken from their own scatter alone the interval was over twelve uncertainties wide.
    [Fact]
    public void Two_groups_that_agree_are_surer_than_one()
    {
        GroupReadings[] groups =
        [
            Given.Group("1", ("empty", "31.07"), ("before", "31.31"), ("after", "31.46")),
            Given.Group("2", ("empty", "28.60"), ("before", "28.84"), ("after", "29.00")),
        ];
        ClassQuantity both = Analyse(groups).Class.Find("moleRatio")!;
        ClassQuantity one = Analyse(groups[..1]).Class.Find("moleRatio")!;

        Assert.InRange(both.Interval.High - both.Interval.Low, 0.2, 0.65);
        Assert.True(both.AsClass.StandardUncertainty < one.AsClass.StandardUncertainty);
        Assert.InRange(both.Value, Math.Min(one.Value, 0.99), 1.02);
    }

    // Groups that contradict each other stay unsure: 0.5 and 1.25 are no 0.9.
    [Fact]
    public void Two_groups_that_contradict_each_other_are_less_sure_than_two_that_agree()
    {
        GroupReadings good = Given.Group("1", ("empty", "31.07"), ("before", "31.31"), ("after", "31.46"));
        ClassQuantity agree = Analyse([good, Given.Group("2", ("empty", "28.60"), ("before", "28.84"), ("after", "29.00"))]).Class.Find("moleRatio")!;
        ClassQuantity contradict = Analyse([good, Given.Group("2", ("empty", "28.60"), ("before", "28.84"), ("after", "28.88"))]).Class.Find("moleRatio")!;

        Assert.True(contradict.Interval.Width > 1.7 * agree.Interval.Width);
    }

    /// <summary>One result has one interval: the class of one group gives the group's own, as the chart draws it.</summary>
    [Fact]
    public void One_group_has_one_interval()
    {
        ClassFindings found = Analyse([Given.Group("1", ("empty", "31.07"), ("before", "31.31"), ("after", "31.46"))]);

        Assert.Equal(found.Groups[0].Find("moleRatio")!.Interval, found.Class.Find("moleRatio")!.Interval);
    }

    [Fact]
    public void Two_groups_that_reheated_are_both()
    {
        string[] found = [.. Analyse(
            [
                Given.Group("1", ("empty", "31.07"), ("before", "31.31"), ("after", "31.46"), ("after2", "31.46")),
                Given.Group("2", ("empty", "28.60"), ("before", "28.84"), ("after", "29.00"), ("after2", "29.00")),
            ]).Class.Conclusion];

        Assert.Contains(found, s => s.StartsWith("Both groups that reheated reached constant mass", StringComparison.Ordinal));
    }

    // Seven groups of nine have weighed after heating, all of them upwards.
    [Fact]
    public void Groups_that_have_not_weighed_yet_are_not_spoken_of_as_if_they_were_not_there()
    {
        GroupReadings[] groups =
        [
            .. DrawnClass.Of(groups: 7, reacted: 1, seed: 3),
            Given.Group("8", ("empty", "31.07"), ("before", "31.31")), Given.Group("9", ("empty", "28.60")),
        ];
        ClassFindings found = Analyse(groups);

        Assert.StartsWith("The mass rose in all 7 groups weighed so far (there are 9): ", found.Class.Conclusion[0], StringComparison.Ordinal);
        Assert.StartsWith("The mass rose in all 7 groups weighed so far (there are 9).", TalkingPoints.Of(found)[0].Text, StringComparison.Ordinal);
    }

    // A lid of 12 g left off puts one group's ratio near −78.
    [Fact]
    public void A_mean_that_an_odd_result_has_ruined_is_not_given_as_a_value_and_groups_keep_their_word()
    {
        GroupReadings[] groups =
        [
            .. DrawnClass.Of(groups: 7, reacted: 1, seed: 3), Given.Group("8", ("empty", "31.02"), ("before", "31.26"), ("after", "19.35")),
        ];
        string odd = Analyse(groups).Class.Conclusion.Single(s => s.Contains("odd result", StringComparison.Ordinal) && s.Contains("until explained", StringComparison.Ordinal));

        Assert.Contains("until explained: group 8. With it the class's median, which a few odd results hardly move, is ", odd, StringComparison.Ordinal);
        Assert.Contains("the mean would be dragged to ", odd, StringComparison.Ordinal);
        Assert.EndsWith(", which is no value of this class.", odd, StringComparison.Ordinal);
    }

    private static ClassFindings Analyse(IReadOnlyList<GroupReadings> groups) => ClassAnalysis.Of(
        Given.Magnesium,
        new ClassReadings(Given.Magnesium.Id, groups, new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>())),
        Given.Weights,
        Given.NoCauses);
}
