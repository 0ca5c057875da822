using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>
/// What the shipped equations and quantities come to. Masses of 1 g and percentages were worked out by hand from the
/// abridged atomic weights (IUPAC 2021: H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, Mg 24.305, S 32.06,
/// Cu 63.546), to the digits given.
/// </summary>
public sealed class TheoryTests
{
    private static readonly AtomicWeights Weights = AtomicWeights.Iupac2024;

    [Theory]
    [InlineData("magnesium-oxide", "burning", "MgO", 1.6583)]
    [InlineData("magnesium-oxide", "burning", "O2", 0.6583)]
    [InlineData("copper-sulfate-hydrate", "first-four", "H2O", 0.2886)]
    [InlineData("sodium-hydrogencarbonate", "decomposition", "Na2CO3", 0.6308)]
    public void Mass_for_1_g_of_the_limiting_material(string id, string reaction, string formula, double expected)
    {
        Reaction found = BuiltInPracticals.Find(id)!.Reactions.Single(r => r.Id == reaction);
        ReactionTerm limiting = found.Reactants.Single(t => t.Material == found.Limiting);
        ReactionTerm asked = found.Reactants.Concat(found.Products).Single(t => t.FormulaText == formula);
        Assert.Equal(expected, MassOf(asked) / MassOf(limiting), 0.00005);
    }

    [Theory]
    [InlineData("to-carbonate", 0.6308)]
    [InlineData("to-hydroxide", 0.476)]
    [InlineData("to-oxide", 0.369)]
    public void Residue_of_1_g_by_each_equation_for_sodium_hydrogencarbonate(string alternative, double expected)
    {
        Alternative found = BuiltInPracticals.Find("sodium-hydrogencarbonate")!.Findings.Alternatives
            .Single(a => a.Id == alternative);
        double fraction = found.ExpectedFraction(Weights).Value;
        Assert.Equal(expected, fraction, expected == 0.6308 ? 0.00005 : 0.0005);
    }

    /// <summary>Two reading sets worked out with rounded molar masses (Mg 24.3, O 16.0; salt 159.6, water 18.0), a ratio
    /// quoted the other way round turned over, and masses that complete reactions leave.</summary>
    [Theory]
    [InlineData("magnesium-oxide", "moleRatio", 30.00, 30.24, 30.38, 0.8859)]     // 0.00875 mol to 0.009877 mol
    [InlineData("magnesium-oxide", "percentOxygen", 30.00, 30.24, 30.38, 36.84)]
    [InlineData("magnesium-oxide", "yield", 30.00, 30.24, 30.38, 95.5)]
    [InlineData("magnesium-oxide", "massChange", 30.00, 30.24, 30.38, 0.14)]
    [InlineData("copper-sulfate-hydrate", "moleRatio", 25.00, 27.50, 26.62, 4.817)]
    [InlineData("copper-sulfate-hydrate", "percentWater", 25.00, 27.50, 26.62, 35.2)]
    [InlineData("copper-sulfate-hydrate", "massChange", 25.00, 27.50, 26.62, -0.88)]
    [InlineData("copper-sulfate-hydrate", "moleRatio", 0, 1, 0.6392, 5.00)]
    [InlineData("copper-sulfate-hydrate", "percentWater", 0, 1, 0.6392, 36.08)]
    [InlineData("copper-sulfate-hydrate", "moleRatio", 0, 1, 0.7114, 3.59)]       // monohydrate left
    [InlineData("sodium-hydrogencarbonate", "residueFraction", 20, 21, 20.6308, 0.6308)]
    [InlineData("sodium-hydrogencarbonate", "percentLoss", 20, 21, 20.6308, 36.92)]
    [InlineData("sodium-hydrogencarbonate", "yield", 20, 21, 20.6308, 100.0)]
    public void Quantities_of_readings_worked_out_by_hand(
        string id, string quantity, double empty, double before, double after, double expected)
    {
        QuantityDefinition asked = BuiltInPracticals.Find(id)!.Quantities.Single(q => q.Id == quantity);
        double found = asked.Formula.Evaluate(Reading(empty, before, after), MolarMass);
        // Rounded molar masses and three figures of the hand calculation: 0.15 %.
        Assert.Equal(expected, found, 0.0015 * Math.Abs(expected));
    }

    /// <summary>How far a group's change lies from what its sample should give, in g: nothing for the masses that complete
    /// reactions leave, and by hand for readings that stray from them. A gram too much in a reading moves it as told.</summary>
    [Theory]
    [InlineData("magnesium-oxide", 0, 1, 1.6583, 0)]
    [InlineData("magnesium-oxide", 0, 1, 1.5000, -0.1583)]                       // 0.5000 g in place of 0.6583 g
    [InlineData("magnesium-oxide", 1, 1, 1.6583, 0.6583)]                        // no magnesium, so none of the gain is due
    [InlineData("copper-sulfate-hydrate", 0, 1, 0.6392, 0)]
    [InlineData("copper-sulfate-hydrate", 0, 1, 0.7114, 0.0722)]                 // monohydrate left: 0.7114 - 0.6392
    [InlineData("sodium-hydrogencarbonate", 20, 21, 20.6308, 0)]
    [InlineData("sodium-hydrogencarbonate", 20, 21, 20.9000, 0.2692)]            // 0.1000 g lost in place of 0.3692 g
    public void Departure_from_the_change_that_is_due_worked_out_by_hand(
        string id, double empty, double before, double after, double expected)
    {
        double found = BuiltInPracticals.Find(id)!.Findings.AsExpected!.Difference
            .Evaluate(Reading(empty, before, after), MolarMass);
        Assert.Equal(expected, found, 0.0001);
    }

    [Theory]
    [InlineData("massWater", 0.88)]
    [InlineData("massSalt", 1.62)]
    [InlineData("molesWater", 0.04889)]
    [InlineData("molesSalt", 0.01015)]
    [InlineData("x", 4.817)]
    [InlineData("percentWater", 35.2)]
    public void Answers_of_the_hydrate_follow_from_readings_and_earlier_answers(string answer, double expected)
    {
        var known = new Dictionary<string, double> { ["empty"] = 25.00, ["before"] = 27.50, ["after"] = 26.62 };
        foreach (AnswerDefinition next in BuiltInPracticals.Find("copper-sulfate-hydrate")!.Answers)
        {
            known[next.Id] = next.Formula.Evaluate(name => known[name], MolarMass);
        }

        Assert.Equal(expected, known[answer], 0.001 * expected);
    }

    /// <summary>With every parameter at its ideal the equations alone speak, so each share that can go wrong has one.</summary>
    [Fact]
    public void Every_share_and_every_stray_mass_has_an_ideal()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            // What is put in, or let burn, is the group's own choice: the middle of its law will do.
            Assert.All(practical.Parameters.Where(p => p.Law is not ParameterLaw.Normal), p => Assert.True(
                p.Ideal is not null, $"{p.Id} of {practical.Id} has no ideal."));
        }
    }

    [Fact]
    public void Every_largest_sample_covers_what_the_practical_hands_out()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            string[] put = [.. practical.Procedure.OfType<AddEvent>().SelectMany(a => a.Mass.Names)];
            // A candle's wax, or what a current carries, is no amount that is put out.
            if (practical.Amounts is not AmountsDefinition amounts || !practical.Kit.Any(k => k.Need.IsSample))
            {
                continue;
            }

            ParameterLaw.Normal law = practical.Parameters.Where(p => put.Contains(p.Id)).Select(p => p.Law).OfType<ParameterLaw.Normal>().First(l => l.Mean == amounts.UsualInGrams);
            Assert.True(law.Mean <= practical.Limits.LargestSample, practical.Id);
            Assert.Contains(practical.Kit, k => k.Need.IsSample && k.Need.Number == law.Mean && k.Need.Unit == practical.Limits.Unit);
        }
    }

    private static double MassOf(ReactionTerm term) => term.Coefficient * term.Formula.MolarMass(Weights).Value;

    private static double MolarMass(string formula) => Formula.Parse(formula).Value.MolarMass(Weights).Value;

    private static Func<string, double> Reading(double empty, double before, double after) =>
        name => name switch { "empty" => empty, "before" => before, _ => after };
}
