using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>A point's evidence against the closed form: readings that are jointly normal, their covariance written out and
/// inverted by elimination.</summary>
public class PointFitTests
{
    [Fact]
    public void Evidence_and_precision_are_those_of_the_joint_normal_law()
    {
        var hidden = new HiddenGroups(new Circumstances(SmallBench.Practical), Given.Weights, density: 0.05);
        GroupReadings group = Given.Group("1", ("empty", "24.51"), ("before", "24.75"), ("after", "24.87"), ("after2", "24.88"));
        GroupProblem problem = GroupProblem.Of(
            hidden, group, Given.Class(SmallBench.Practical, group).Balance, [new AmountPrior(0.24, 0.048)], silenceCounts: false, Given.Weights);
        var fit = new PointFit(problem.View.Table, problem.Unknowns, problem.Rows);
        for (int point = 0; point < hidden.Count; point += 7)
        {
            fit.Fit(point, problem.Grams);
            (double log, double[,] precision) = Direct(problem, point);

            Assert.Equal(log, fit.LogEvidence, 1e-6);
            for (int i = 0; i < 4; i++)
            {
                for (int j = 0; j < 4; j++)
                {
                    Assert.Equal(precision[i, j], fit.Precision(i, j), 1e-5 * precision[i, i]);
                }
            }
        }
    }

    private static (double Log, double[,] Precision) Direct(GroupProblem problem, int point)
    {
        const int N = 4;
        double[,] covariance = new double[N, N];
        double[] away = new double[N];
        for (int i = 0; i < N; i++)
        {
            int at = (point * problem.View.Weighings.Count) + i;
            double slope = problem.View.Slopes[at];
            away[i] = problem.Grams[i] - problem.View.Intercepts[at] - problem.Unknowns.Means[0] - (slope * 0.24);
            for (int j = 0; j < N; j++)
            {
                double other = problem.View.Slopes[(point * problem.View.Weighings.Count) + j];
                covariance[i, j] = (1 / problem.Unknowns.Precisions[0]) + (slope * other * 0.048 * 0.048)
                    + (i == j ? problem.Rows[i].Variance + problem.View.Widths[at] : 0);
            }
        }

        (double logDeterminant, double[,] inverse) = Invert(covariance);
        double quadratic = 0;
        for (int i = 0; i < N; i++)
        {
            for (int j = 0; j < N; j++)
            {
                quadratic += away[i] * inverse[i, j] * away[j];
            }
        }

        return (-0.5 * (quadratic + logDeterminant + (N * Math.Log(2 * Math.PI))), inverse);
    }

    private static (double LogDeterminant, double[,] Inverse) Invert(double[,] matrix)
    {
        int n = matrix.GetLength(0);
        double[,] a = (double[,])matrix.Clone();
        double[,] inverse = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            inverse[i, i] = 1;
        }

        double log = 0;
        for (int c = 0; c < n; c++)
        {
            double pivot = a[c, c];
            log += Math.Log(pivot);
            for (int j = 0; j < n; j++)
            {
                a[c, j] /= pivot;
                inverse[c, j] /= pivot;
            }

            for (int i = 0; i < n; i++)
            {
                double factor = a[i, c];
                for (int j = 0; i != c && j < n; j++)
                {
                    a[i, j] -= factor * a[c, j];
                    inverse[i, j] -= factor * inverse[c, j];
                }
            }
        }

        return (log, inverse);
    }
}
