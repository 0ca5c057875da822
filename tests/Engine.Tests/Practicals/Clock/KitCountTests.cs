using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Clock;

public sealed class KitCountTests
{
    /// <summary>scipy.stats.binom.ppf(0.95, pieces, breaks), scipy 1.10.1; 0 raised to the one spare that everything has.</summary>
    [Theory]
    [InlineData(12, 0.08, 3)]
    [InlineData(12, 0.04, 2)]
    [InlineData(15, 0.08, 3)]
    [InlineData(18, 0.08, 4)]
    [InlineData(18, 0.04, 2)]
    [InlineData(1, 0.08, 1)]
    [InlineData(1, 0.04, 1)]
    [InlineData(30, 0.5, 19)]
    [InlineData(12, 0.001, 1)]
    [InlineData(400, 0.08, 41)]
    public void Spares_are_enough_nineteen_times_in_twenty(int pieces, double breaks, int spares) =>
        Assert.Equal(spares, KitCount.SparesFor(pieces, breaks));

    [Fact]
    public void What_never_breaks_has_one_spare_and_what_always_breaks_all() =>
        Assert.Equal((1, 12), (KitCount.SparesFor(12, 0), KitCount.SparesFor(12, 1)));

    [Fact]
    public void A_class_of_twelve_gets_what_it_needs()
    {
        PlanSettings settings = new PlanSettings(Given.Magnesium, 12, Given.Balances(2), 60).WithClass(12, 27).WithTrials(2).WithSample(0.2);
        KitCount Of(string id) => KitCount.Of(Given.Magnesium.Kit.Single(k => k.Id == id), settings);
        Assert.Equal((12.0, 2), (Of("crucible").Amount, Of("crucible").Spare));
        Assert.Equal((12.0, 3), (Of("lid").Amount, Of("lid").Spare));
        Assert.Equal((27.0, 1), (Of("goggles").Amount, Of("goggles").Spare));
        Assert.Equal((1.0, 1), (Of("sand").Amount, Of("sand").Spare));
        // 12 groups, two trials of 0.2 g, and a fifth more in reserve; at 1.0 g a metre that many metres.
        Assert.Equal((4.8, 0), (Math.Round(Of("ribbon").Amount, 9), Of("ribbon").Spare));
        Assert.Equal(5.76, Of("ribbon").Total, 9);
        Assert.Equal(5.76 / 0.9, Of("ribbon").LengthInMetres(0.9)!.Value, 9);
        Assert.Null(Of("lid").LengthInMetres(0.9));
        Assert.Equal((4.8, 12 * 0.08, 0.0), (Math.Round(Of("ribbon").UsedUp, 9), Of("lid").UsedUp, Of("tongs").UsedUp));
    }

    [Fact]
    public void Every_practical_puts_out_one_spare_of_everything_counted()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            var settings = new PlanSettings(practical, 18, Given.Balances(3), 60);
            Assert.All(practical.Kit.Where(k => k.Need.Unit is null && !k.Loss.IsOfRoom), k => Assert.True(KitCount.Of(k, settings).Spare >= 1, k.Id));
            Assert.True(practical.Amounts is not null || !practical.Kit.Any(k => k.Need.IsSample), practical.Id);
        }
    }
}
