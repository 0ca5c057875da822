namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>What the readings say at one choice of the parameters: residuals and derivatives, each over its uncertainty.</summary>
internal sealed class FitPoint
{
    private FitPoint(double[] parameters, double[] residuals, double[] derivatives, double sumOfSquares)
    {
        Parameters = parameters;
        Residuals = residuals;
        Derivatives = derivatives;
        SumOfSquares = sumOfSquares;
    }

    public double[] Parameters { get; }

    /// <summary>Reading less curve.</summary>
    public double[] Residuals { get; }

    /// <summary>Derivatives of the curve, column after column.</summary>
    public double[] Derivatives { get; }

    public double SumOfSquares { get; }

    /// <summary>Null where the curve has no value, or one that is not finite.</summary>
    public static FitPoint? At(NonlinearProblem problem, double[] parameters)
    {
        int points = problem.Model.Points;
        var residuals = new double[points];
        var derivatives = new double[points * parameters.Length];
        if (!problem.Model.TryEvaluate(parameters, residuals, derivatives))
        {
            return null;
        }

        ReadOnlySpan<double> readings = problem.Readings;
        ReadOnlySpan<double> uncertainties = problem.StandardUncertainties;
        double sum = 0;
        for (int i = 0; i < points; i++)
        {
            residuals[i] = (readings[i] - residuals[i]) / uncertainties[i];
            sum += residuals[i] * residuals[i];
        }

        for (int place = 0, i = 0; place < derivatives.Length; place++, i = i + 1 == points ? 0 : i + 1)
        {
            derivatives[place] /= uncertainties[i];
            sum += 0 * derivatives[place];
        }

        // 0 times a derivative that is not finite makes the sum NaN, which this refuses too.
        return sum <= double.MaxValue ? new FitPoint(parameters, residuals, derivatives, sum) : null;
    }
}
