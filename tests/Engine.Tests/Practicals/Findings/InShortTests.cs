using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

// Invented classes; what can be said follows from how they were made.
public sealed class InShortTests
{
    private static readonly (string, string)[] Lidless = [("empty", "31.02"), ("before", "31.26"), ("after", "19.35")];

    [Fact]
    public void A_sound_class_says_that_the_mass_rose_and_how_far_chance_reaches()
    {
        ClassFindings found = Findings(DrawnClass.Of(groups: 12, reacted: 1, seed: 7));
        IReadOnlyList<string> said = InShort.Of(found, accepted: false);
        Assert.Equal("The mass rose in all 12 groups: more than chance explains.", said[0]);
        string[] words = said[1].Split(' ');
        Assert.Equal(found.Class.Find("moleRatio")!.Interval.Low, double.Parse(words[5], System.Globalization.CultureInfo.InvariantCulture), 0.006);
        Assert.Equal(2, said.Count);
    }

    // Seven of eight: 2 · (1 + 8) · 2⁻⁸ = 0.0703, which does not leave chance out.
    [Fact]
    public void What_chance_may_do_is_said_to_be_so() =>
        Assert.StartsWith("The mass rose in 7 of 8 groups: chance may do that.", InShort.Of(Findings([.. DrawnClass.Of(groups: 7, reacted: 1, seed: 12), Given.Group("lidless", Lidless)]), accepted: false)[0], StringComparison.Ordinal);

    // With fewer than six groups no split of signs is unlikely enough: 2 · 2⁻⁵ = 0.0625.
    [Fact]
    public void Few_groups_are_held_against_the_balance() =>
        Assert.Equal("The mass rose in all 3 groups: more than the balance explains.", InShort.Of(Findings(DrawnClass.Of(groups: 3, reacted: 1, seed: 5)), accepted: false)[0]);

    [Fact]
    public void One_group_cannot_speak_for_others() =>
        Assert.Contains("One group cannot show what others would find.", InShort.Of(Findings(DrawnClass.Of(groups: 1, reacted: 1, seed: 5)), accepted: false));

    [Fact]
    public void The_formula_is_told_only_where_it_may_be()
    {
        ClassFindings found = Findings(DrawnClass.Of(groups: 12, reacted: 1, seed: 7));
        Assert.DoesNotContain(InShort.Of(found, accepted: false), s => s.Contains("MgO", StringComparison.Ordinal));
        Assert.Contains(InShort.Of(found, accepted: true), s => s.Contains("MgO", StringComparison.Ordinal));
    }

    [Fact]
    public void Groups_with_simulated_readings_are_counted_and_not_named()
    {
        UncountedGroup[] uncounted = [new UncountedGroup.Simulated("Amber"), new UncountedGroup.Simulated("Birch"), new UncountedGroup.Joined("Cedar", "Dove")];
        string said = string.Join('\n', InShort.Of(Findings(DrawnClass.Of(groups: 6, reacted: 1, seed: 7), uncounted), accepted: true));
        Assert.Contains("2 groups went on with simulated readings and are not counted.", said, StringComparison.Ordinal);
        Assert.DoesNotMatch("Amber|Birch|Cedar|Dove", said);
    }

    private static ClassFindings Findings(IEnumerable<GroupReadings> groups, IReadOnlyList<UncountedGroup>? uncounted = null)
    {
        ClassReadings read = Given.Class(Given.Magnesium, [.. groups]);
        return ClassAnalysis.Of(
            Given.Magnesium, new ClassReadings(read.PracticalId, read.Groups, read.Balance, uncounted: uncounted), Given.Weights, Given.NoCauses);
    }
}
