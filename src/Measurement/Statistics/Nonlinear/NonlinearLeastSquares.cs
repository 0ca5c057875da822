namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>
/// Least squares for curves that depend on their parameters in any smooth way. Same readings and start, same answer. The
/// answer is never a number that is none: what could not be found is a case of the result.
/// </summary>
public static class NonlinearLeastSquares
{
    // With each column of derivatives at length 1, a direction that changes the curve by no more than this is not told from
    // rounding; derivatives of a well-conditioned formula are right to about 1e-15.
    private const double Unseen = 1e-11;

    // Parameters that take part in an unseen direction by less than this are not to blame for it.
    private const double Part = 1e-3;

    /// <summary>Finds the parameters that bring the curve nearest to the readings, from the problem's start.</summary>
    /// <exception cref="ArgumentNullException"><paramref name="problem"/> is null.</exception>
    public static NonlinearFitResult Fit(NonlinearProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        int count = problem.Model.Parameters.Count;
        if (problem.Model.Points <= count)
        {
            return new NonlinearFitResult.TooFewPoints(problem.Model.Points, count + 1);
        }

        if (TrustRegion.From(problem) is not { } search)
        {
            return new NonlinearFitResult.DidNotConverge("the curve has no value at the start");
        }

        return search.Failure is { } failure
            ? new NonlinearFitResult.DidNotConverge(failure)
            : Judge(problem, search);
    }

    private static NonlinearFitResult Judge(NonlinearProblem problem, TrustRegion search)
    {
        List<int> free = search.Free;
        var factor = new TriangularFactor(search.Point, free);
        double[] scale = [.. factor.ColumnNorms.Select(norm => norm > 0 ? norm : 1)];
        var singular = new SingularFactor(factor.Upper, scale);
        string[] unseen = [.. Enumerable.Range(0, free.Count)
            .Where(k => Enumerable.Range(0, free.Count).Any(j =>
                singular.Values[j] <= Unseen && Math.Abs(singular.Directions[k, j]) > Part))
            .Select(k => problem.Model.Parameters[free[k]])];
        return unseen.Length > 0
            ? new NonlinearFitResult.NotIdentified(unseen)
            : new NonlinearFitResult.Converged(new NonlinearFit(problem, search, Inverse(problem, free, singular, scale)));
    }

    // (JᵀJ)⁻¹ = D⁻¹ V S⁻² Vᵀ D⁻¹, with nothing in the rows of parameters at a bound.
    private static double[,] Inverse(NonlinearProblem problem, List<int> free, SingularFactor singular, double[] scale)
    {
        int all = problem.Model.Parameters.Count;
        var inverse = new double[all, all];
        for (int a = 0; a < free.Count; a++)
        {
            for (int b = 0; b < free.Count; b++)
            {
                double sum = 0;
                for (int j = 0; j < free.Count; j++)
                {
                    sum += singular.Directions[a, j] / singular.Values[j] * (singular.Directions[b, j] / singular.Values[j]);
                }

                inverse[free[a], free[b]] = sum / scale[a] / scale[b];
            }
        }

        return inverse;
    }
}
