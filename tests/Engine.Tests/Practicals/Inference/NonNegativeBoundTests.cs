using Calx.Practicals.Inference;
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
    [Fact]
    public void Far_below_zero_it_tends_to_the_exponentials_point() =>
        Assert.Equal(Math.Log(20) / 30, NonNegativeBound.Upper(-30, 1, 0.95), 0.001 * Math.Log(20) / 30 + 1e-4);

    [Fact]
    public void It_is_never_negative_and_rises_with_what_was_measured() =>
        Gen.Select(Gen.Double[-8, 8], Gen.Double[0.01, 2], Gen.Double[0, 1]).Sample((x, u, step) =>
        {
            double lower = NonNegativeBound.Upper(x * u, u, 0.95);
            double higher = NonNegativeBound.Upper((x + step) * u, u, 0.95);
            Assert.True(lower >= 0 && higher >= lower * (1 - 1e-12));
        });
}
