using Calx.Practicals.Inference;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Inference;

public class NonNegativeBoundTests
{
    // At 0 the cut-off normal is the half-normal: its 95 % point is the two-sided 95 % point of the normal, 1.959964.
    [Fact]
    public void A_measured_zero_gives_the_half_normals_point() =>
        Assert.Equal(1.959963984540054, NonNegativeBound.Upper(0, 1, 0.95), 1e-9);

    // Far above 0 the cut does nothing: the one-sided 95 % point of the normal, 1.644854.
    [Fact]
    public void Far_above_zero_it_is_the_ordinary_one_sided_bound() =>
        Assert.Equal(100 + 1.6448536269514722, NonNegativeBound.Upper(100, 1, 0.95), 1e-9);

    // Far below 0 the cut-off normal tends to an exponential with rate |x|/u²: its 95 % point is u² ln 20 / |x|.
    [Theory]
    [InlineData(-29.999, 0.003)]
    [InlineData(-30.001, 0.003)]
    [InlineData(-500, 1e-4)]
    public void Far_below_zero_it_tends_to_the_exponentials_point(double measured, double share) =>
        Assert.Equal(1, NonNegativeBound.Upper(measured, 1, 0.95) * -measured / Math.Log(20), share);

    [Fact]
    public void It_is_never_negative_and_rises_with_what_was_measured() =>
        Gen.Select(Gen.Double[-29, 29], Gen.Double[0.01, 2], Gen.Double[0, 1]).Always((x, u, step) =>
        {
            double lower = NonNegativeBound.Upper(x * u, u, 0.95);
            double higher = NonNegativeBound.Upper((x + step) * u, u, 0.95);
            Assert.True(lower >= 0 && higher >= lower * (1 - 1e-12));
        });
}
