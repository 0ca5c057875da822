using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Written;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>Wrong values made by known wrong workings: each is explained by the idea that made it.</summary>
public class KnownIdeasTests
{
    /// <summary>Values of tests/reference/scripts/wrong_workings.py: what students do is common practice, no source.</summary>
    public static TheoryData<string, string, string, string> Workings { get; } =
        [.. File.ReadLines("reference/computed/wrong_workings.csv").Skip(1).Select(l => l.Split(',')).Select(c => (c[0], c[1], c[2], c[3]))];

    [Theory]
    [MemberData(nameof(Workings))]
    public void A_wrong_value_is_explained_by_what_made_it(string practical, string answer, string idea, string written)
    {
        IdeaFindings found = Look(practical, answer, written);

        Assert.Contains(found.Candidates, c => c.Ideas.Count == 1 && c.Ideas[0].Id == idea);
        Assert.Equal(found.Candidates.OrderByDescending(c => c.Probability), found.Candidates);
        Assert.InRange(found.Candidates.Sum(c => c.Probability) + found.SomethingElse, 0.5, 1 + 1e-9);
    }

    /// <summary>Values of tests/reference/scripts/wrong_workings_elsewhere.py: workings of practicals that weigh, time, measure temperature or current.</summary>
    public static TheoryData<string> Elsewhere { get; } = [.. File.ReadLines("reference/computed/wrong_workings_elsewhere.csv").Skip(1)];

    [Theory]
    [MemberData(nameof(Elsewhere))]
    public void Wrong_values_of_other_practicals_are_explained_as_well(string line)
    {
        string[] parts = line.Split('"'), before = parts[0].Split(','), after = parts[2].Split(',');
        (string Id, double[] Values, string Unit)[] readings =
        [
            .. before[1].Split(';').Select(r => r.Split(' ')).Select(r => (r[0], r[1..^1].Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray(), r[^1])),
        ];
        var values = readings.ToDictionary(r => r.Id, r => r.Values[^1]);
        foreach ((string id, double[] taken, _) in readings.Where(r => r.Values.Length > 1))
        {
            values[MarkingFacts.Earlier(id)] = taken[^2];
        }

        Expression formula = Expression.Parse(parts[1]).Value;
        Expression[] others = after[2].Length == 0 ? [] : [Expression.Parse(after[2]).Value];
        var facts = new MarkingFacts(
            readings.ToDictionary(r => r.Id, r => new ReadingFacts(r.Unit, r.Values.Length)), [], [formula, .. others], after[1].Split(';', StringSplitOptions.RemoveEmptyEntries));
        var number = Assert.IsType<AnswerText.Number>(AnswerText.Read(after[4]));

        IdeaFindings found = new IdeaSearch(VariantSet.Of(formula, facts), facts)
            .Of(number, name => values.GetValueOrDefault(name, double.NaN), [new MolarMasses(AtomicWeightSets.Named("school-1dp")).Of]);

        Assert.Contains(found.Candidates, c => c.Ideas.Count == 1 && c.Ideas[0].Id == after[3]);
    }

    /// <summary>These end at the same number: both are named, and so is the value that would tell them apart.</summary>
    [Theory]
    [InlineData("0.886", "inverted", "molar-mass-over-mass")]
    [InlineData("1.714", "moles-skipped", "one-molar-mass")]
    [InlineData("2.604", "molar-masses-swapped", "multiplied-for-divided")]
    public void What_the_answer_cannot_tell_apart_stays_tied(string written, string one, string other)
    {
        IdeaFindings found = Look("magnesium-oxide", "ratio", written);

        string[] leading = [.. found.Candidates.Take(2).SelectMany(c => c.Ideas).Select(i => i.Id).Order(StringComparer.Ordinal)];
        Assert.Equal(new[] { one, other }.Order(StringComparer.Ordinal), leading);
        Assert.Equal("molesMagnesium", found.TellApart);
    }

    [Fact]
    public void A_number_that_nothing_explains_is_left_unexplained()
    {
        IdeaFindings found = Look("magnesium-oxide", "massOxygen", "7.77");

        Assert.True(found.SomethingElse > 0.5, $"{found.SomethingElse}: {string.Join(", ", found.Candidates.Select(c => c.Formula))}");
    }

    [Fact]
    public void Ids_and_labels_are_unique_and_rates_are_shares()
    {
        Assert.Equal(KnownIdeas.All.Count, KnownIdeas.All.Select(i => i.Id).Distinct().Count());
        Assert.Equal(KnownIdeas.All.Count, KnownIdeas.All.Select(i => i.Label).Distinct().Count());
        Assert.All(KnownIdeas.All, i => Assert.InRange(i.Rate, 0.001, 0.5));
        Assert.Equal(
            typeof(KnownIdeas).GetProperties().Where(p => p.PropertyType == typeof(Idea)).Select(p => ((Idea)p.GetValue(null)!).Id).Order(),
            KnownIdeas.All.Select(i => i.Id).Order());
    }

    private static IdeaFindings Look(string practicalId, string answerId, string written)
    {
        Practical practical = BuiltInPracticals.Find(practicalId)!;
        var facts = new MarkingFacts(practical);
        Expression formula = facts.Expanded(
            practical.AllAnswers.OfType<AnswerDefinition>().FirstOrDefault(a => a.Id == answerId)?.Formula ?? practical.Quantities.Single(q => q.Id == answerId).Formula);
        Dictionary<string, double> readings = practicalId switch
        {
            "magnesium-oxide" => new() { ["empty"] = 30.00, ["before"] = 30.24, ["after"] = 30.38 },
            "copper-sulfate-hydrate" => new() { ["empty"] = 25.00, ["before"] = 27.50, ["after"] = 26.62 },
            _ => new() { ["empty"] = 20.00, ["before"] = 22.00, ["after"] = 21.26 },
        };
        var search = new IdeaSearch(VariantSet.Of(formula, facts), facts);
        var number = Assert.IsType<AnswerText.Number>(AnswerText.Read(written));
        return search.Of(number, name => readings.GetValueOrDefault(name, double.NaN), [new MolarMasses(AtomicWeightSets.Named("school-1dp")).Of]);
    }
}
