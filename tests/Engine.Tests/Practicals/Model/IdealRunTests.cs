using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Engine.Tests.Practicals.Model;

// Theory values worked out from the abridged IUPAC atomic weights, apart from the program.
public class IdealRunTests
{
    [Fact]
    public void A_gram_of_magnesium_takes_up_0_6583_g_of_oxygen() =>
        Assert.Equal(0.6583, new IdealRun(Given.Magnesium, Given.Weights).ChangeOfOneGram, 5e-5);

    [Fact]
    public void The_oxide_holds_one_oxygen_for_one_magnesium() =>
        Assert.Equal(1, new IdealRun(Given.Magnesium, Given.Weights).Accepted("moleRatio"), 1e-12);

    [Fact]
    public void The_blue_salt_holds_five_waters_and_loses_36_08_percent() 
    {
        var run = new IdealRun(Given.Hydrate, Given.Weights);

        Assert.Equal(5, run.Accepted("moleRatio"), 1e-9);
        Assert.Equal(-0.3608, run.ChangeOfOneGram, 5e-5);
    }

    [Fact]
    public void Hydrogencarbonate_leaves_63_08_percent() =>
        Assert.Equal(0.6308, new IdealRun(Given.Hydrogencarbonate, Given.Weights).Accepted("residueFraction"), 5e-5);

    // Signs of table A5 of the trade's facts: too little oxygen for each of these.
    [Theory]
    [InlineData("not-all-reacted", -1)]
    [InlineData("product-lost", -1)]
    [InlineData("side-reaction", -1)]
    [InlineData("tarnished-sample", -1)]
    [InlineData("damp-vessel", -1)]
    [InlineData("weighed-warm", -1)]
    [InlineData("extra-mass", 1)]
    [InlineData("part-left-off", 0)]
    [InlineData("misread", 0)]
    public void Each_fault_of_burning_magnesium_pulls_the_way_the_bench_does(string cause, int direction)
    {
        FaultDefinition fault = Given.Magnesium.Faults.Single(f => f.Cause == cause);

        Assert.Equal(direction, new IdealRun(Given.Magnesium, Given.Weights).DirectionOf(fault));
    }

    // Leverage of lost product, worked by hand: a share s of the product lost takes s · 1.6583/0.6583 = 2.519 s of the gain.
    [Fact]
    public void Lost_product_takes_two_and_a_half_times_its_share_from_the_gain()
    {
        var model = new BenchModel(Given.Magnesium, Given.Weights);
        double Gain(double smoke)
        {
            TrueMasses masses = model.Run(id => id == "smoke" ? smoke : model.Ideal(id), rounds: 1);
            return masses.Last("after") - masses.Last("before");
        }

        Assert.Equal(2.519, (Gain(0) - Gain(0.01)) / Gain(0) / 0.01, 1e-3);
    }

    // Table A5: nitride instead of oxide for a share f of the metal takes 0.416 f of the gain (worked out there).
    [Fact]
    public void Nitride_takes_0_416_of_its_share_from_the_gain()
    {
        var model = new BenchModel(Given.Magnesium, Given.Weights);
        double Gain(double nitrided)
        {
            TrueMasses masses = model.Run(id => id == "nitrided" ? nitrided : model.Ideal(id), rounds: 1);
            return masses.Last("after") - masses.Last("before");
        }

        Assert.Equal(0.416, (Gain(0) - Gain(0.1)) / Gain(0) / 0.1, 1e-3);
    }

    [Fact]
    public void Mass_is_conserved_when_nothing_leaves_but_what_the_air_gives()
    {
        var model = new BenchModel(Given.Magnesium, Given.Weights);
        TrueMasses none = model.Run(id => id == "burnt" ? 0 : model.Ideal(id), rounds: 3);

        Assert.Equal(none.Last("before"), none.At("after3"), 1e-12);
    }

    // What no fault moves has no spread. For magnesium, soot of
    // 0.7 · 0.010 + 0.3 · 0.060 = 0.025 g on 0.24 g alone gives √(0.1 · 0.9) · (0.025/16.00)/(0.24/24.305) = 0.047.
    [Fact]
    public void Groups_differ_by_what_the_faults_of_the_practical_make_of_them()
    {
        var ideal = new IdealRun(Given.Magnesium, Given.Weights);

        Assert.Equal(0, ideal.SpreadOf("sampleMass"));
        Assert.InRange(ideal.SpreadOf("moleRatio"), 0.047, 0.35);
    }
}
