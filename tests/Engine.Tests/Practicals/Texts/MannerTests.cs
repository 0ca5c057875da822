using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Engine.Tests.Practicals.Texts;

/// <summary>Words that fit what a practical does. Which is which was read off the files: an oven dries copper, a flame heats
/// magnesium; the copper is a product in a vessel, the oxygen a gain.</summary>
public class MannerTests
{
    [Theory]
    [InlineData("magnesium-oxide", "")]
    [InlineData("copper-sulfate-hydrate", "")]
    [InlineData("sodium-hydrogencarbonate", "")]
    [InlineData("copper-by-iron", "dryness drying product")]
    [InlineData("silver-by-copper", "dryness drying product")]
    [InlineData("zinc-iodide", "dryness drying")]
    [InlineData("barium-sulfate", "dryness product")]
    [InlineData("zinc-chloride", "dryness")]
    public void A_practical_says_how_it_is_spoken_of(string id, string manners) =>
        Assert.Equal(manners, string.Join(' ', Manners.Of(BuiltInPracticals.Find(id)!)));

    [Fact]
    public void What_is_dried_is_not_said_to_be_heated()
    {
        var plain = new SettingsTexts(EngineLanguage.British.For(Given.Magnesium));
        var dried = new SettingsTexts(EngineLanguage.British.For(BuiltInPracticals.Find("copper-by-iron")!));

        Assert.Equal("heated 2 times", plain.HeatedTimes("2"));
        Assert.Equal("dried 2 times", dried.HeatedTimes("2"));
        Assert.Equal(plain.Prepared, dried.Prepared);
    }

    [Fact]
    public void A_language_goes_back_to_its_plain_words_for_the_next_practical()
    {
        EngineLanguage dried = EngineLanguage.British.For(BuiltInPracticals.Find("copper-by-iron")!);

        Assert.Same(EngineLanguage.British, dried.For(Given.Magnesium));
        Assert.Same(dried, dried.For(BuiltInPracticals.Find("copper-by-zinc")!));
    }

    // Nothing reacts while copper dries, so the same mass twice says nothing of what has reacted.
    [Fact]
    public void Dryness_bounds_nothing_unreacted()
    {
        Practical practical = BuiltInPracticals.Find("copper-by-iron")!;
        ClassReadings readings = Given.Class(
            practical, Given.Group("A", ("empty", "30.01"), ("before", "30.52"), ("after", "30.64"), ("after2", "30.61")));
        ConstantMass found = ClassAnalysis.Of(practical, readings, Given.Weights, Given.NoCauses).Groups[0].ConstantMass!;

        Assert.Equal(ConstantMassVerdict.Falling, found.Verdict);
        Assert.Null(found.UnreactedAtMost);
        Assert.Contains("whether it is dry", found.Reason, StringComparison.Ordinal);
    }
}
