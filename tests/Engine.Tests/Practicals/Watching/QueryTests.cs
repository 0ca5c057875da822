using Calx.Chemistry.Elements;
using Calx.Measurement.Distributions;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>Which readings a student is asked to look at again.</summary>
public sealed class QueryTests(ITestOutputHelper output)
{
    /// <summary>An entry's id that is not among those asked about anyway.</summary>
    private static readonly UInt128 Quiet = Ids().First(id => Ask("", "empty", "28.60", id) is ReadingQuery.None);

    [Theory]
    [InlineData("15.1", 0.01, "Your balance shows two decimals. Look again and type all you see.")]
    [InlineData("15.104", 0.01, "Your balance shows two decimals. Look again and type all you see.")]
    [InlineData("15", 0.1, "Your balance shows one decimal. Look again and type all you see.")]
    [InlineData("15.10", 0.001, "Your balance shows three decimals. Look again and type all you see.")]
    public void Other_decimals_than_the_balance_shows_are_asked_about(string written, double step, string words)
    {
        ReadingQuery query = Watch.QueryFor(Group("", balance: new Balance(step)), new Weighing("empty", 1), Written(written), Quiet);
        Assert.IsType<ReadingQuery.WrongDecimals>(query);
        Assert.Equal(words, query.ForStudent);
    }

    [Theory]
    [InlineData("empty=28.60", "before", "29.84")]
    [InlineData("empty=28.60", "before", "82.84")]
    [InlineData("empty=28.60 before=28.84", "after", "29.99")]
    [InlineData("empty=28.60 before=28.84", "after", "82.99")]
    [InlineData("empty=28.60 before=28.84", "after", "18.99")]
    [InlineData("empty=28.60 before=28.84 after=28.99", "after2", "28.09")]
    public void A_slip_is_asked_about_without_a_word_of_what_is_expected(string before, string id, string written)
    {
        ReadingQuery query = Ask(before, id, written, Quiet);
        Assert.True(Assert.IsType<ReadingQuery.LookAgain>(query).IsImplausible);
        Assert.Equal("Look again at the display.", query.ForStudent);
    }

    [Theory]
    [InlineData("", "empty", "28.60")]
    [InlineData("empty=28.60", "before", "28.84")]
    [InlineData("empty=28.60 before=28.84", "after", "28.99")]
    // Hardly anything burnt, much smoke, or warm: odd results, but results.
    [InlineData("empty=28.60 before=28.84", "after", "28.86")]
    [InlineData("empty=28.60 before=28.84", "after", "28.80")]
    [InlineData("empty=28.60 before=28.84 after=28.99", "after2", "28.95")]
    public void Readings_that_are_odd_for_another_reason_are_not(string before, string id, string written)
    {
        Assert.IsType<ReadingQuery.None>(Ask(before, id, written, Quiet));
    }

    [Fact]
    public void A_number_that_the_display_cannot_show_is_asked_about()
    {
        // A balance in steps of 0.02 g shows no odd hundredths.
        ReadingQuery query = Watch.QueryFor(Group("", balance: new Balance(0.02)), new Weighing("empty", 1), Written("28.61"), Quiet);
        Assert.IsType<ReadingQuery.LookAgain>(query);
    }

    [Fact]
    public void One_ordinary_reading_in_ten_is_asked_about_too_with_the_same_words_and_the_same_one_each_time()
    {
        // Binomial of 4000: 400, standard deviation 19.
        Assert.InRange(Ids().Take(4000).Count(id => QueryRule.IsAskedAnyway(5, id)), 400 - 76, 400 + 76);
        // Another lesson asks about others: both ask about one in a hundred.
        Assert.InRange(Ids().Take(4000).Count(id => QueryRule.IsAskedAnyway(5, id) && QueryRule.IsAskedAnyway(6, id)), 15, 65);
        foreach (UInt128 id in Ids().Take(30))
        {
            ReadingQuery query = Ask("", "empty", "28.60", id);
            Assert.Equal(QueryRule.IsAskedAnyway(5, id) ? "Look again at the display." : null, query.ForStudent);
            Assert.False(query is ReadingQuery.LookAgain { IsImplausible: true });
        }
    }

    [Fact]
    public void In_an_assessed_lesson_nothing_is_asked()
    {
        foreach (string written in (string[])["15.1", "29.99", "28.99"])
        {
            Assert.IsType<ReadingQuery.None>(Watch.QueryFor(
                Group("empty=28.60 before=28.84"), new Weighing("after", 1), Written(written), Quiet, assessed: true));
        }
    }

    [Fact]
    public void A_reading_that_stands_in_the_table_already_is_judged_like_a_new_one()
    {
        GroupAtWork with = Group("empty=28.60 before=28.84 after=29.99");
        Assert.IsType<ReadingQuery.LookAgain>(Watch.QueryFor(with, new Weighing("after", 1), Written("29.99"), Quiet));
        Assert.IsType<ReadingQuery.None>(Watch.QueryFor(with, new Weighing("after", 1), Written("28.99"), Quiet));
    }

    /// <summary>
    /// Slips and honest readings of drawn groups: from the second reading on most slips that can be seen are asked about, and few
    /// honest readings. The page docs/methods/watching.md has the figures of all three practicals.
    /// </summary>
    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    public void Most_slips_are_asked_about_and_few_honest_readings(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        var rule = new QueryRule(new PlanSettings(practical, 12, [Centigram], 100).WithPrepared(true), AtomicWeights.Iupac2024, 1);
        int groups = LongProofs.Cases(400, 3000);
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(practical, ["fired"]),
            AtomicWeights.Iupac2024,
            new SimulationPlan(groups, Centigram, notesObservations: false),
            seed: 3,
            cancellation: TestContext.Current.CancellationToken);
        var slips = new List<bool>();
        var honest = new List<bool>();
        foreach (SimulatedGroup one in drawn.Groups)
        {
            var taken = new List<TakenReading>();
            foreach (SimulatedReading reading in one.Readings)
            {
                var group = new GroupAtWork(1, 1, Centigram, new GroupReadings("G1", null, [.. taken]));
                bool slip = reading.Written.Value != reading.Displayed.Value;
                bool whole = reading.Written.Decimals == reading.Displayed.Decimals;
                if (taken.Count > 0 && whole && (slip || one.Number % 4 == 0))
                {
                    (slip ? slips : honest).Add(rule.SlipFactor(group, reading.Weighing, reading.Written) >= QueryRule.ImplausibleFrom);
                }

                taken.Add(new TakenReading(reading.Weighing.Reading, reading.Weighing.Occurrence, reading.Displayed));
            }
        }

        output.WriteLine(FormattableString.Invariant($"{id}: {slips.Count(q => q)} of {slips.Count} slips, {honest.Count(q => q)} of {honest.Count} honest readings"));
        Assert.True(slips.Count > 10);
        Assert.True(slips.Count(q => q) >= 0.65 * slips.Count, $"{slips.Count(q => q)} of {slips.Count} slips");
        Assert.True(honest.Count(q => q) <= 0.02 * honest.Count, $"{honest.Count(q => q)} of {honest.Count} honest readings");
    }

    private static ReadingQuery Ask(string before, string id, string written, UInt128 entry)
    {
        int occurrence = char.IsAsciiDigit(id[^1]) ? id[^1] - '0' : 1;
        return Watch.QueryFor(Group(before), new Weighing(id.TrimEnd('2', '3'), occurrence), Written(written), entry);
    }

    private static IEnumerable<UInt128> Ids()
    {
        var random = new RandomStream(77, 1);
        while (true)
        {
            yield return new UInt128(random.NextUInt64(), random.NextUInt64());
        }
    }
}
