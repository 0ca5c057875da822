using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>More points for groups whose readings single out few, and the way from a point to its neighbours.</summary>
public class SecondLookTests
{
    [Fact]
    public void Finer_points_say_the_same_of_sets_and_leave_the_others_as_they_were()
    {
        var hidden = new HiddenGroups(new Circumstances(SmallBench.Practical), Given.Weights, density: 0.1);
        HiddenBlock chosen = hidden.Blocks[1];
        HiddenGroups finer = hidden.Finer([chosen.Set]);

        Assert.Same(finer, hidden.Finer([chosen.Set]));
        foreach ((HiddenBlock before, HiddenBlock after) in hidden.Blocks.Zip(finer.Blocks))
        {
            Assert.Equal(before.Set, after.Set);
            Assert.Equal(before.Count * Math.Exp(before.LogWeight), after.Count * Math.Exp(after.LogWeight), 1e-12);
            Assert.Equal(before.Set == chosen.Set ? HiddenGroups.TimesFiner * before.Count : before.Count, after.Count);
            for (int k = 0; k < before.Count; k++)
            {
                // The first points of an even spread are the same however many follow.
                Assert.Equal(hidden.ValuesOf(before.First + k), finer.ValuesOf(after.First + k));
                Assert.Equal(hidden.EvenOf(before.First + k, before.Set), finer.EvenOf(after.First + k, after.Set));
                AssertSameLine(hidden.View(2), before.First + k, finer.View(2), after.First + k, before.Set != chosen.Set);
            }
        }
    }

    [Fact]
    public void Few_points_that_bear_a_set_call_for_a_second_look_and_many_do_not()
    {
        FaultSet few = FaultSet.Of(0);
        FaultSet many = FaultSet.Of(1);
        IEnumerable<Atom> atoms = Enumerable.Range(0, 4).Select(i => new Atom(i, few, null) { Weight = 0.1 })
            .Concat(Enumerable.Range(4, 100).Select(i => new Atom(i, many, null) { Weight = 0.006 }));

        Assert.Equal([few], SecondLook.SetsFor([.. atoms]));
    }

    [Fact]
    public void Neighbours_found_in_order_are_those_found_among_all() =>
        Gen.Select(Gen.Int[4, 60], Gen.Int[1, 4], Gen.Double[0.001, 1000].Array[4]).SelectMany((count, n, scales) =>
            Gen.Double[-1, 1].Array[count * n].Select(masses => (count, n, scales[..n], masses))).Always(drawn =>
        {
            (int count, int n, double[] scales, double[] masses) = drawn;
            double[] widths = new double[masses.Length];
            PointWidths.Fill(widths, [new HiddenBlock(default, 0, count, 0)], masses, [], [], scales);

            for (int point = 0; point < count; point++)
            {
                int[] nearest = [.. Enumerable.Range(0, count).Where(o => o != point).OrderBy(o => Enumerable.Range(0, n).Sum(i => Squared(scales[i] * (masses[(point * n) + i] - masses[(o * n) + i])))).Take(3)];
                for (int i = 0; i < n; i++)
                {
                    double expected = nearest.Sum(o => Squared(masses[(point * n) + i] - masses[(o * n) + i])) / 6;
                    Assert.Equal(expected, widths[(point * n) + i], 1e-12);
                }
            }
        });

    private static void AssertSameLine(HiddenView before, int point, HiddenView after, int finer, bool withWidth)
    {
        int n = before.Weighings.Count;
        for (int i = 0; i < n; i++)
        {
            Assert.Equal(before.Intercepts[(point * n) + i], after.Intercepts[(finer * n) + i]);
            Assert.Equal(before.Slopes[(point * n) + i], after.Slopes[(finer * n) + i]);
            if (withWidth)
            {
                Assert.Equal(before.Widths[(point * n) + i], after.Widths[(finer * n) + i]);
            }
        }
    }

    private static double Squared(double value) => value * value;
}
