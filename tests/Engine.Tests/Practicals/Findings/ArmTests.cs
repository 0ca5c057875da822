using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>Groups that do a practical in several ways: drawn so, and each way found again by itself.</summary>
public class ArmTests
{
    private const string WeakTablet = "arms:\n  - { id: weak, label: weak tablet, set: { sodaShare: { normal: [0.20, 0.003] } }, standing: judgement }\n\nprocedure:\n";

    private static Practical Marble => BuiltInPracticals.Find("marble-and-acid")!;

    [Theory]
    [InlineData("", "", 12, "6 6")]
    [InlineData("", "", 13, "7 6")]
    [InlineData("share: 0.25, ", "", 12, "9 3")]
    [InlineData("share: 1, ", "", 12, "12")]
    [InlineData("share: 0.25, ", "share: 0.75, ", 8, "2 6")]
    [InlineData("", "", 1, "1 0")]
    public void Groups_are_divided_as_the_file_says_or_evenly(string first, string second, int groups, string counts)
    {
        string more = second.Length == 0 ? "" : $"  - {{ id: other, label: other, {second}set: {{ smoke: {{ fixed: 0 }} }}, standing: judgement }}\n";
        Practical practical = Read(Given.Magnesium, $"arms:\n  - {{ id: covered, label: covered, {first}set: {{ smoke: {{ fixed: 0 }} }}, standing: judgement }}\n{more}\nprocedure:\n");
        ArmDivision division = ArmDivision.Of(practical, groups)!;
        Assert.Equal(counts, string.Join(' ', division.Counts));
        // Any run of groups has of each way as many as it should, to within one group.
        Assert.All(Enumerable.Range(1, groups), n => Assert.All(Enumerable.Range(0, division.Ways.Count), w => Assert.InRange(
            Enumerable.Range(1, n).Count(g => division.WayOf(g) == w) - ((double)n * division.Counts[w] / groups), -1.001, 1.001)));
    }

    [Theory]
    [InlineData("share: 0.6, ", "share: 0.6, ", "the shares of the arms add up to 1.2; expected 1 at most")]
    [InlineData("share: 0.6, ", "", "the arm 'b' has no share, and others have one")]
    [InlineData("share: 0, ", "share: 0.2, ", "expected a number above 0 up to 1")]
    public void Shares_that_cannot_be_are_faults(string first, string second, string reason)
    {
        string arms = $"arms:\n  - {{ id: a, label: a, {first}set: {{ smoke: {{ fixed: 0 }} }}, standing: judgement }}\n  - {{ id: b, label: b, {second}set: {{ smoke: {{ fixed: 0 }} }}, standing: judgement }}\n\nprocedure:\n";
        Assert.Contains(
            PracticalReader.Read(Given.Magnesium.SourceText.Replace("procedure:\n", arms, StringComparison.Ordinal), "f.yaml").Faults,
            f => f.Reason.Contains(reason, StringComparison.Ordinal));
    }

    // The file's laws: half-lives of 1.5 min and 0.75 min, each within 15 % from group to group; seven groups each.
    [Fact]
    public void Each_way_is_found_again_by_itself()
    {
        SimulatedClass drawn = Draw(Marble, groups: 14, seed: 5);
        ClassFindings found = Analyse(Marble, drawn, causes: false);

        Assert.Equal([null, "small-chips"], found.Arms.Select(a => a.Arm?.Id));
        Assert.Equal(1.5, HalfLife(found.Arms[0]), 0.2);
        Assert.Equal(0.75, HalfLife(found.Arms[1]), 0.1);
        Assert.Equal(14, found.Groups.Count);
        Assert.Equal(drawn.Groups.Select(g => g.Name), found.Groups.Select(g => g.Name));
        Assert.Contains(found.Class.Conclusion, s => s.StartsWith("Small chips: ", StringComparison.Ordinal) && s.Contains("half-life", StringComparison.Ordinal));
        Assert.Contains("in two ways", Assert.Single(found.Class.Sentences, s => s.Topic == ConclusionTopic.Arms).Text, StringComparison.Ordinal);

        static double HalfLife(ArmFindings arm) => arm.Result.Curve!.Find("halfLife")!.Value;
    }

    // By hand: 3.5 g of tablet with 0.20 of NaHCO3 (84.006 g/mol, IUPAC 2021 abridged) give 3.5 · 0.20 · 44.009/84.006 = 0.3667 g of CO2.
    [Fact]
    public void An_arm_has_its_own_accepted_values_where_no_ideal_is_named()
    {
        string text = BuiltInPracticals.Find("tablet-in-water")!.SourceText.Replace("ideal: 0.40, law", "law", StringComparison.Ordinal);
        Practical practical = PracticalReader.Read(text.Replace("procedure:\n", WeakTablet, StringComparison.Ordinal), "f.yaml").Practical!;
        Assert.Equal(-0.3667, new IdealRun(practical, Given.Weights, practical.Arms[0]).Accepted("openChange"), 0.0001);
        Assert.Equal(-0.7334, new IdealRun(practical, Given.Weights).Accepted("openChange"), 0.0001);
        Assert.Equal(-0.7334, new IdealRun(BuiltInPracticals.Find("tablet-in-water")!, Given.Weights).Accepted("openChange"), 0.0001);
    }

    // Sound groups of both ways: the weak tablets lose half as much, and are odd only to those who do not know of them.
    [Fact]
    public void Groups_are_odd_only_among_their_own()
    {
        Practical tablet = Read(BuiltInPracticals.Find("tablet-in-water")!, WeakTablet);
        GroupReadings[] groups = [.. Enumerable.Range(1, 12).Select(g => Group(g, weak: g > 9, g > 9 ? "Weak tablet" : g == 1 ? "" : null))];

        ClassFindings found = ClassAnalysis.Of(tablet, Given.Class(tablet, groups), Given.Weights, Given.NoCauses);
        ClassFindings blind = ClassAnalysis.Of(tablet, Given.Class(tablet, [.. Enumerable.Range(1, 12).Select(g => Group(g, weak: g > 9, null))]), Given.Weights, Given.NoCauses);

        Assert.Equal([9, 3], found.Arms.Select(a => a.Groups.Count));
        Assert.DoesNotContain(found.Groups, g => g.IsAnomalous);
        Assert.Equal(-0.31, found.Arms[1].Result.Find("openChange")!.Value, 0.005);
        Assert.Equal(-0.66, found.Arms[0].Result.Find("openChange")!.Value, 0.01);
        Assert.Equal(["10", "11", "12"], blind.Groups.Where(g => g.IsAnomalous).Select(g => g.Name));
        Assert.Empty(blind.Arms);
    }

    [Fact]
    public void A_word_that_names_no_arm_is_told()
    {
        Practical tablet = Read(BuiltInPracticals.Find("tablet-in-water")!, WeakTablet);
        GroupReadings[] groups = [.. Enumerable.Range(1, 6).Select(g => Group(g, weak: false, g == 3 ? "weeak" : "ordinary"))];
        ClassFindings found = ClassAnalysis.Of(tablet, Given.Class(tablet, groups), Given.Weights, Given.NoCauses);
        Assert.Contains("weeak", Assert.Single(found.Class.Sentences, s => s.Topic == ConclusionTopic.Arms).Text, StringComparison.Ordinal);
    }

    // What a group of an arm shows is looked for under the arm's laws: with weak tablets the loss is as expected.
    [Fact]
    public void Causes_are_looked_for_under_the_laws_of_the_arm()
    {
        Practical tablet = Read(BuiltInPracticals.Find("tablet-in-water")!, WeakTablet);
        GroupReadings[] groups = [.. Enumerable.Range(1, 2).Select(g => Group(g, weak: true, g % 2 == 0 ? "weak" : ""))];
        ClassFindings found = ClassAnalysis.Of(tablet, Given.Class(tablet, groups), Given.Weights);
        Assert.All(found.Arms[1].Groups, g => Assert.Equal(Causes.AsExpected, g.Diagnosis!.First.Cause));
        Assert.All(found.Arms[0].Groups, g => Assert.NotEqual(Causes.AsExpected, g.Diagnosis!.First.Cause));
    }

    private static GroupReadings Group(int g, bool weak, string? arm)
    {
        GroupReadings plain = Given.Group(
            $"{g}", ("openBefore", $"{140 + g}.00"), ("openAfter", FormattableString.Invariant($"{140 + g - (weak ? 0.31m : 0.66m) + (g % 3 * 0.01m) - 0.01m:F2}")),
            ("closedBefore", $"{120 + g}.50"), ("closedAfter", $"{120 + g}.{(g % 2 == 0 ? "50" : "49")}"));
        return new GroupReadings(plain.Name, null, plain.Readings, remarks: new GroupRemarks(arm: arm));
    }

    private static Practical Read(Practical practical, string instead)
    {
        PracticalReading reading = PracticalReader.Read(practical.SourceText.Replace("procedure:\n", instead, StringComparison.Ordinal), "f.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }

    private static SimulatedClass Draw(Practical practical, int groups, ulong seed) => SimulatedClass.Draw(
        new Circumstances(practical), Given.Weights, new SimulationPlan(groups, arms: ArmDivision.Of(practical, groups)), seed, cancellation: TestContext.Current.CancellationToken);

    private static ClassFindings Analyse(Practical practical, SimulatedClass drawn, bool causes) => ClassAnalysis.Of(
        practical, new ClassReadings(practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(BalanceOptions.NothingGiven, new Dictionary<string, decimal> { ["end"] = 0.01m })),
        Given.Weights, new AnalysisOptions(causes, []));
}
