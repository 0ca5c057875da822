using Calx.Practicals.Clock;
using Calx.Practicals.Texts;

namespace Calx.Engine.Tests.Practicals.Clock;

public sealed class OddsTests
{
    [Theory]
    [InlineData(0, "hardly ever")]
    [InlineData(0.004, "hardly ever")]
    [InlineData(0.01, "once in 100")]
    [InlineData(0.98, "98 times in 100")]
    [InlineData(0.994, "99 times in 100")]
    [InlineData(0.999, "practically always")]
    public void A_probability_is_said_in_times(double probability, string words) => Assert.Equal(words, Odds.Times(probability, EngineLanguage.British));

    [Theory]
    [InlineData(0.33, "one group in three")]
    [InlineData(0.66, "two groups in three")]
    [InlineData(0.5, "every second group")]
    [InlineData(0.1, "one group in ten")]
    [InlineData(0.9, "nine groups in ten")]
    [InlineData(0.95, "95 groups in 100")]
    [InlineData(0.05, "5 groups in 100")]
    [InlineData(0.01, "1 group in 100")]
    [InlineData(0.001, "hardly a group")]
    [InlineData(0.998, "nearly every group")]
    public void A_share_is_said_as_teachers_say_it(double share, string words) => Assert.Equal(words, Odds.OfGroups(share, EngineLanguage.British));

    [Theory]
    [InlineData(0.896, "just under 90 times in 100")]
    [InlineData(0.9, "90 times in 100")]
    [InlineData(0.4951, "just under 50 times in 100")]
    [InlineData(0.62, "62 times in 100")]
    public void What_misses_a_limit_is_not_rounded_onto_it(double probability, string words) => Assert.Equal(words, Odds.Times(probability, EngineLanguage.British, 0.5, 0.9));
}
