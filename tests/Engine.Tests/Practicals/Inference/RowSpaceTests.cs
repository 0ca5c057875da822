using Calx.Practicals.Inference;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Inference;

public class RowSpaceTests
{
    [Fact]
    public void A_row_that_the_others_determine_brings_nothing_new()
    {
        var space = new RowSpace(3);

        Assert.True(space.TryAdd([1, 0, 0]));
        Assert.True(space.TryAdd([1, 1, 0]));
        Assert.False(space.TryAdd([0, 2, 0]));
        Assert.Equal(2, space.Rank);
    }

    [Fact]
    public void A_combination_is_expressed_by_its_weights_in_the_order_added()
    {
        var space = new RowSpace(3);
        space.TryAdd([1, 0, 0]);
        space.TryAdd([1, 1, 0]);
        space.TryAdd([1, 1, 1]);

        Assert.True(space.TryExpress([0, 1, -2], out double[] weights));
        // Solved on paper: the third unknown is row 3 − row 2, the second is row 2 − row 1.
        Assert.Equal([-1, 3, -2], weights);
    }

    [Fact]
    public void A_direction_that_no_row_touches_is_not_expressed()
    {
        var space = new RowSpace(3);
        space.TryAdd([1, 1, 0]);

        Assert.False(space.TryExpress([1, 0, 0], out _));
    }

    [Fact]
    public void The_particular_solution_gives_the_readings_back() =>
        Gen.Int[-2, 2].Array[4].Array[1, 5].Always(rows =>
        {
            var space = new RowSpace(4);
            int[][] kept = rows.Where(row => space.TryAdd([.. row.Select(x => (double)x)])).ToArray();
            double[] readings = [.. Enumerable.Range(0, kept.Length).Select(i => 1.5 + i * i)];
            double[][] solution = space.ParticularSolution();

            foreach ((int[] row, double reading) in kept.Zip(readings))
            {
                double sum = row.Select((x, j) => x * solution[j].Zip(readings, (w, r) => w * r).Sum()).Sum();
                Assert.Equal(reading, sum, 1e-9);
            }
        });

    [Fact]
    public void Every_combination_of_rows_is_expressed_and_gives_the_target_back() =>
        Gen.Select(Gen.Int[-2, 2].Array[4].Array[1, 5], Gen.Int[-3, 3].Array[5]).Always((rows, mix) =>
        {
            var space = new RowSpace(4);
            int[][] kept = rows.Where(row => space.TryAdd([.. row.Select(x => (double)x)])).ToArray();
            double[] target = [.. Enumerable.Range(0, 4).Select(j => (double)kept.Select((row, i) => row[j] * mix[i]).Sum())];

            Assert.True(space.TryExpress(target, out double[] weights));
            for (int j = 0; j < 4; j++)
            {
                Assert.Equal(target[j], kept.Select((row, i) => row[j] * weights[i]).Sum(), 1e-9);
            }
        });
}
