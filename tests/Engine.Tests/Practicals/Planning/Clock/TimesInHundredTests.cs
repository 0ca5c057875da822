using Calx.Practicals.Planning.Clock;

namespace Calx.Engine.Tests.Practicals.Planning.Clock;

/// <summary>A rounded chance agrees with the verdict beside it. The limits 0.5 and 0.9 are the project's own judgement.</summary>
public sealed class TimesInHundredTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.494, 49)]
    [InlineData(0.499, 49)]
    [InlineData(0.5, 50)]
    [InlineData(0.506, 51)]
    [InlineData(0.894, 89)]
    [InlineData(0.896, 89)]
    [InlineData(0.89999, 89)]
    [InlineData(0.9, 90)]
    [InlineData(0.996, 100)]
    [InlineData(1, 100)]
    public void A_chance_is_rounded_but_never_onto_a_limit_that_it_misses(double probability, int times) =>
        Assert.Equal(times, LessonForecast.TimesInHundred(probability));
}
