using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Engine.Tests.Practicals.Model;

/// <summary>A reaction of two things that are both weighed out stops when either has run out: iron in a solution that holds too
/// little copper(II) sulfate. Masses worked out by hand from Fe 55.845, Cu 63.546, CuSO4 159.602 (IUPAC 2021).</summary>
public class LimitingReactantTests
{
    private const string Added = "mass: 3.99 * strength";

    // 0.50 g of iron is 8.953 mmol, less than the 25 mmol of the solution: 8.953 mmol of copper, 0.5689 g.
    [Fact]
    public void In_excess_the_metal_decides() => Assert.Equal(0.5689, Copper(Added), 1e-4);

    // 0.798 g of copper(II) sulfate is 5.000 mmol: 0.3177 g of copper, and 3.953 mmol or 0.2208 g of iron that is left with it.
    [Fact]
    public void Too_little_of_the_solution_leaves_metal_behind() => Assert.Equal(0.3177 + 0.2208, Copper("mass: 0.798 * strength"), 1e-4);

    [Fact]
    public void Without_the_other_reactant_nothing_happens() => Assert.Equal(0.50, Copper("mass: 0 * strength"), 1e-9);

    private static double Copper(string added)
    {
        string text = BuiltInPracticals.Find("copper-by-iron")!.SourceText;
        Assert.Contains(Added, text, StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text.Replace(Added, added, StringComparison.Ordinal), "x.yaml");
        Assert.Empty(reading.Faults);
        TrueMasses masses = new IdealRun(reading.Practical!, Given.Weights).Masses;
        return masses.Last("after") - masses.Last("empty");
    }
}
