using Calx.Practicals.Clock;
using Calx.Practicals.Planning.Words;

namespace Calx.Engine.Tests.Practicals.Planning.Words;

/// <summary>A rounded chance agrees with the verdict beside it. The limits 0.5 and 0.9 are the project's own judgement.</summary>
public sealed class InHundredTests
{
    [Theory]
    [InlineData(0, "< 1")]
    [InlineData(1, "> 99")]
    [InlineData(0.001, "< 1")]
    [InlineData(0.999, "> 99")]
    [InlineData(0.63, "63")]
    [InlineData(0.994, "99")]
    [InlineData(0.006, "1")]
    public void Nothing_is_called_certain_that_was_only_counted(double probability, string text) => Assert.Equal(text, Odds.InHundred(probability));

    [Theory]
    [InlineData(0, "< 1")]
    [InlineData(0.494, "49")]
    [InlineData(0.499, "49")]
    [InlineData(0.5, "50")]
    [InlineData(0.506, "51")]
    [InlineData(0.894, "89")]
    [InlineData(0.896, "89")]
    [InlineData(0.89999, "89")]
    [InlineData(0.9, "90")]
    [InlineData(0.996, "> 99")]
    [InlineData(1, "> 99")]
    public void A_chance_is_rounded_but_never_onto_a_limit_that_it_misses(double probability, string times) =>
        Assert.Equal(times, Odds.InHundred(probability, LessonForecast.FitsNot, LessonForecast.FitsWell));
}
