using Calx.Practicals.Choosing;
using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Choosing;

/// <summary>The shelf is narrowed by what happens, by what is at hand, and by words.</summary>
public sealed class ShelfWishTests
{
    [Fact]
    public void Nothing_said_narrows_nothing() => Assert.Equal(BuiltInPracticals.All, Found(new ShelfWish()));

    // Silver and copper stand in the title, the formula in the file alone: facts that a chemist sees, no source.
    [Theory]
    [InlineData("silver copper", "silver-by-copper")]
    [InlineData("MgSO4.7H2O", "magnesium-sulfate-hydrate")]
    [InlineData("MgSO₄·7H₂O", "magnesium-sulfate-hydrate")]
    [InlineData("WAX", "candle-open-and-closed")]
    public void Words_are_found_in_title_question_and_substances(string words, string id) =>
        Assert.Equal([id], Found(new ShelfWish { Words = words.Split(' ') }).Select(p => p.Id));

    [Fact]
    public void Every_wish_leaves_out_what_it_says_and_nothing_else()
    {
        (ShelfWish Wish, Func<Practical, bool> Holds)[] wishes =
        [
            (new ShelfWish { NoFlame = true }, p => p.Kit.All(k => !k.Flame)),
            (new ShelfWish { DemonstrationOnly = true }, p => p.Limits.Groups == 1),
            (new ShelfWish { Family = PracticalFamily.OverTime }, p => p.Series is not null),
            (new ShelfWish { NoFumeCupboard = true }, p => p.Id is not ("zinc-iodide" or "zinc-chloride" or "moisture-and-ash")),
            (new ShelfWish { Family = PracticalFamily.Same, NoFlame = true }, p => p.Id is "precipitation-in-closed-flask" or "tablet-in-water"),
        ];
        foreach ((ShelfWish wish, Func<Practical, bool> holds) in wishes)
        {
            Assert.Equal(BuiltInPracticals.All.Where(holds), Found(wish));
            Assert.NotEmpty(Found(wish));
        }
    }

    /// <summary>61.5 min is what burning magnesium takes at the shortest, added up by hand in <see cref="PracticalFactsTests"/>.</summary>
    [Theory]
    [InlineData(61.4, false)]
    [InlineData(61.5, true)]
    public void Minutes_at_hand_are_held_against_the_shortest_way(double minutes, bool fits) =>
        Assert.Equal(fits, Found(new ShelfWish { Minutes = minutes }).Any(p => p.Id == "magnesium-oxide"));

    [Theory]
    [InlineData(0.1, false)]
    [InlineData(0.01, true)]
    [InlineData(0.001, true)]
    public void A_coarse_balance_leaves_out_small_changes(double step, bool fits)
    {
        Assert.Equal(fits, Found(new ShelfWish { StepInGrams = step }).Any(p => p.Id == "magnesium-oxide"));
        Assert.Contains(Found(new ShelfWish { StepInGrams = step }), p => p.Id == "magnesium-sulfate-hydrate");
    }

    private static IReadOnlyList<Practical> Found(ShelfWish wish) => [.. BuiltInPracticals.All.Where(wish.Fits)];
}
