using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Model;

namespace Calx.Engine.Tests.Practicals.Shelf;

/// <summary>
/// What each practical's file comes to, with its reactions complete and nothing going wrong, against values that a short program of
/// other make worked out from the abridged atomic weights (IUPAC 2021; tests/reference/scripts/shelf_*.py) or a handbook has.
/// </summary>
public sealed class AcceptedValueTests
{
    private static readonly AtomicWeights Weights = AtomicWeightSets.Named("iupac-abridged");

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_file_alone_gives_the_value_of_theory(string id)
    {
        ShelfTables.Theory[] rows = [.. ShelfTables.Theories.Where(t => t.Practical == id)];
        Assert.True(rows.Length > 0 || BuiltInPracticals.Find(id)!.Findings.NoAccepted is not null, $"no theory value of {id} stands in tests/reference/shelf_theory*.csv");
        var ideal = new IdealRun(BuiltInPracticals.Find(id)!, Weights);
        Assert.All(rows, row =>
        {
            Assert.NotEqual("", row.Source);
            Assert.Equal(ShelfTables.Number(row.Value), ideal.Accepted(row.Quantity), ShelfTables.Tolerance(row.Value));
        });
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Readings_of_a_worked_example_give_what_was_worked_out_by_other_means(string id)
    {
        ShelfTables.Example[] examples = [.. ShelfTables.Examples.Where(e => e.Practical == id)];
        Assert.True(examples.Length > 0, $"no worked example of {id} stands in tests/reference/shelf_examples*.csv");
        Practical practical = BuiltInPracticals.Find(id)!;
        Assert.All(examples, example =>
        {
            Assert.True(example.Expected.Count > 0);
            Assert.All(example.Expected, expected => Assert.Equal(
                ShelfTables.Number(expected.Value),
                practical.Quantities.Single(q => q.Id == expected.Key).Formula.Evaluate(name => ShelfTables.Number(example.Readings[name]), MolarMass),
                ShelfTables.Tolerance(expected.Value)));
        });
    }

    /// <summary>Every quantity that is asked for can be found from the weighings that the sheet has rows for.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_readings_of_the_sheet_determine_every_quantity(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        Identifiability found = Identifiability.Of(practical, [.. practical.Readings.Select(r => r.Id)], []);

        Assert.Empty(found.Undetermined.Select(m => $"{m.Quantity.Id}: {m.Why}"));
        Assert.Equal(practical.Quantities.Count, found.Determined.Count);
    }

    private static double MolarMass(string formula) => Formula.Parse(formula).Value!.MolarMass(Weights).Value;
}
