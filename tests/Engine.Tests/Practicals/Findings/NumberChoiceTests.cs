using System.Globalization;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>Which of a few numbers a class's value points to. Electrolysis: a charge of 600 C (0.50 A for 1200 s) sets free 63.546 g/mol ×
/// 600 C / (z × 96 485.33212 C/mol) of copper (Faraday's law; CODATA 2018, IUPAC 2021).</summary>
public class NumberChoiceTests
{
    private static Practical Electrolysis => BuiltInPracticals.Find("copper-electrolysis")!;

    [Theory]
    [InlineData(2, "For the electrons for one atom of copper, 2 is the nearest of the numbers in question, and 1 and 3 can be excluded: it takes two electrons to make one atom of copper, not one or three.")]
    [InlineData(3, "For the electrons for one atom of copper, 3 is the nearest of the numbers in question, and 1 and 2 can be excluded. That is not what was to be shown.")]
    public void The_conclusion_says_which_number_the_copper_points_to(int electrons, string said)
    {
        double grams = 63.546 * 600 / (electrons * 96_485.33212);

        Assert.Equal([said], Choices([-0.005, 0.005, 0.01, -0.01], grams));
    }

    [Fact]
    public void Weighings_that_scatter_as_widely_as_the_numbers_differ_decide_nothing()
    {
        double grams = 63.546 * 600 / (2 * 96_485.33212);

        Assert.Equal(
            ["For the electrons for one atom of copper, the class does not decide between 1, 2 and 3."],
            Choices([-0.08, 0.25, -0.09, 0.30], grams));
    }

    private static string[] Choices(double[] off, double grams)
    {
        ClassFindings findings = ClassAnalysis.Of(
            Electrolysis,
            Given.Class(Electrolysis, [.. off.Select((o, i) => Given.Group($"{i + 1}", ("anodeBefore", "40.000"), ("cathodeBefore", "35.000"), ("current", "0.50"), ("time", "1200"), ("cathodeAfter", Written(35 + grams + o)), ("anodeAfter", Written(40 - grams))))]),
            Given.Weights);
        return [.. findings.Class.Sentences.Where(s => s.Topic == ConclusionTopic.Choice && s.TellsAccepted).Select(s => s.Text)];
    }

    private static string Written(double grams) => grams.ToString("F3", CultureInfo.InvariantCulture);
}
