using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>What is said to take care of, where. Read off the practicals' files by hand.</summary>
public sealed class CautionTests
{
    private const string Tongs = "Tongs and mat every time: porcelain and iron do not look hot.";

    [Theory]
    [InlineData("magnesium-oxide", "clean", "Rub the ribbon bright before it is weighed.")]
    [InlineData("magnesium-oxide", "burn", "Lift the lid only a little and only for a moment; put it back as soon as smoke shows.")]
    [InlineData("magnesium-oxide", "burn", "Keep the lid on and do not look at the burning metal; dry sand at hand; count the ribbon out and in.")]
    [InlineData("magnesium-oxide", "weigh-empty", "Weigh crucible and lid together every time.")]
    [InlineData("magnesium-oxide", "weigh-after", "Weigh only when the cooling time is over.")]
    [InlineData("magnesium-oxide", "cool", "Weigh only when the cooling time is over.")]
    [InlineData("magnesium-oxide", "cool", "Add no water to the residue.")]
    [InlineData("copper-sulfate-hydrate", "heat", "Small flame; stop at once when the powder goes grey or brown, or at a choking smell, and tell the teacher.")]
    [InlineData("copper-sulfate-hydrate", "heat", "Keep face and hands from above the crucible.")]
    [InlineData("copper-sulfate-hydrate", "weigh-before", "Take dry crystals that do not cling together.")]
    [InlineData("copper-sulfate-hydrate", "cool", "Weigh as soon as the cooling time is over.")]
    [InlineData("copper-by-iron", "dry", "Water of at most 60 °C; only the teacher opens the oven; no propanone or ethanol near it; tongs and mat, nobody tests warmth by touch.")]
    [InlineData("tablet-in-water", "close", "Vented plastic bottle of at least three times the gas, whose tape lifts; never glass, never a tight cap without its hole.")]
    [InlineData("tablet-in-water", "clear-up", "Lift the tape first, turn the cap slowly, away from faces; eye protection throughout.")]
    [InlineData("marble-and-acid", "set-up", "Wool plug only, never a bung.")]
    public void A_caution_stands_where_it_helps(string practical, string step, string caution) => Assert.Contains(caution, Of(practical, step));

    [Theory]
    [InlineData("magnesium-oxide", "set-up", "Weigh only when the cooling time is over.")]
    [InlineData("magnesium-oxide", "weigh-before", "Add no water to the residue.")]
    [InlineData("magnesium-oxide", "weigh-before", "Keep the lid on and do not look at the burning metal; dry sand at hand; count the ribbon out and in.")]
    [InlineData("magnesium-oxide", "check", "Keep the lid on and do not look at the burning metal; dry sand at hand; count the ribbon out and in.")]
    [InlineData("magnesium-oxide", "weigh-after", "Keep the lid on and do not look at the burning metal; dry sand at hand; count the ribbon out and in.")]
    [InlineData("magnesium-oxide", "reheat", "Rub the ribbon bright before it is weighed.")]
    [InlineData("magnesium-oxide", "burn", "One reads aloud, the other writes and reads back.")]
    [InlineData("copper-sulfate-hydrate", "check", "Weigh as soon as the cooling time is over.")]
    [InlineData("copper-by-iron", "weigh-empty", "Water of at most 60 °C; only the teacher opens the oven; no propanone or ethanol near it; tongs and mat, nobody tests warmth by touch.")]
    [InlineData("copper-by-iron", "set-up", "Eye protection; collect it with the copper solution.")]
    public void And_not_where_it_does_not(string practical, string step, string caution) => Assert.DoesNotContain(caution, Of(practical, step));

    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public void Tongs_come_first_wherever_something_may_be_hot(string practical)
    {
        foreach (string hot in (string[])["fire-empty", "cool-empty", "weigh-empty", "reheat", "cool", "weigh-after", "clear-up"])
        {
            Assert.Equal(Tongs, Of(practical, hot)[0]);
        }

        foreach (string cold in (string[])["set-up", "weigh-before", "check"])
        {
            Assert.DoesNotContain(Tongs, Of(practical, cold));
        }
    }

    [Fact]
    public void A_group_reads_the_cautions_of_its_step()
    {
        GroupNow cooling = Watch.Now(Group("empty=28.60@15 before=28.84@18", flameOut: 37), At(40), true);
        Assert.Equal(Tongs, cooling.Caution);
        Assert.Contains("Weigh only when the cooling time is over.", cooling.Cautions);
        Assert.Null(Watch.Now(Group(""), At(3, workBegan: null), classBegan: false).Caution);
    }

    /// <summary>The first time that the step comes in the full practical.</summary>
    private static IReadOnlyList<string> Of(string practical, string step)
    {
        Practical found = BuiltInPracticals.Find(practical)!;
        var trial = new TrialRoute(new LessonRoute(new PlanSettings(found, 12, [Centigram], 100), new DurationTable()), 3, first: true);
        int place = trial.Find(0, p => p.Step.Step.Id == step);
        return new StepCautions(found, trial, EngineLanguage.British).Of(place);
    }
}
