using Calx.Papers.Charts;

namespace Calx.Papers.Tests.Charts;

public class LabelTests
{
    [Fact]
    public void No_pole_goes_through_the_text_of_another_flag()
    {
        var random = new Random(7);
        for (int round = 0; round < 200; round++)
        {
            double[] poles = [.. Enumerable.Range(0, 1 + random.Next(20)).Select(_ => 800 * random.NextDouble()).Order()];
            double[] widths = [.. poles.Select(_ => 10 + (250 * random.NextDouble()))];
            int[] levels = Flags.Levels(poles, widths);
            for (int i = 0; i < poles.Length; i++)
            {
                for (int j = i + 1; j < poles.Length && poles[j] <= poles[i] + Flags.Beside + widths[i]; j++)
                {
                    Assert.True(levels[i] > levels[j], $"{i} over {j} in round {round}");
                }
            }
        }
    }

    [Fact]
    public void Flags_far_apart_all_stand_on_the_lowest_level() => Assert.Equal([0, 0, 0], Flags.Levels([0, 200, 400], [100, 100, 100]));

    [Fact]
    public void Labels_of_different_heights_are_pushed_apart_by_their_halves()
    {
        double[] placed = LabelColumn.Spread([100, 100, 100], [20, 40, 60], top: 0, bottom: 400);

        Assert.Equal(100, placed[0]);
        Assert.Equal(130, placed[1]); // Half of 20 and half of 40.
        Assert.Equal(180, placed[2]); // Half of 40 and half of 60.
    }

    [Fact]
    public void Text_is_broken_between_words_and_what_is_too_long_is_cut()
    {
        IReadOnlyList<string> lines = TextWidth.Broken("magnesium and oxygen combine one to one", 130, 3);

        Assert.Equal("magnesium and oxygen combine one to one", string.Join(' ', lines));
        Assert.All(lines, line => Assert.True(TextWidth.Of(line) <= 130));
        Assert.EndsWith("…", TextWidth.Broken("magnesium and oxygen combine one to one", 130, 2)[1], StringComparison.Ordinal);
        Assert.Single(TextWidth.Broken("short", 130, 3));
    }
}
