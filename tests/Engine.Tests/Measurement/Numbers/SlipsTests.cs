using Calx.Measurement.Numbers;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Numbers;

public class SlipsTests
{
    // Counted by hand.
    [Theory]
    [InlineData("magnesium", "magnesium", 0)]
    [InlineData("magnesuim", "magnesium", 1)]
    [InlineData("MGO", "mgo", 0)]
    [InlineData("befor", "before", 1)]
    [InlineData("sulfate", "sulphate", 2)]
    [InlineData("", "abc", 3)]
    public void Slips_of_the_keyboard_are_counted(string from, string to, int slips) => Assert.Equal(slips, Slips.Between(from, to));

    [Fact]
    public void The_count_is_the_same_both_ways_and_never_more_than_the_longer_word() =>
        Gen.Select(Gen.String[Gen.Char["abAB1"], 0, 9], Gen.String[Gen.Char["abAB1"], 0, 9]).Always((a, b) =>
        {
            int slips = Slips.Between(a, b);
            Assert.Equal(slips, Slips.Between(b, a));
            Assert.InRange(slips, Math.Abs(a.Length - b.Length), Math.Max(a.Length, b.Length));
        });

    [Fact]
    public void A_word_with_more_than_a_third_wrong_has_no_nearest() =>
        Assert.Null(Slips.Nearest("copper", ["magnesium", "zinc"]));

    [Fact]
    public void The_nearest_word_is_suggested() =>
        Assert.Equal("analyse", Slips.Nearest("analize", ["formula", "analyse", "equation"]));
}
