namespace Calx.Measurement.Uncertainty;

/// <summary>
/// The law of propagation of uncertainty with the terms of next higher order (JCGM 100:2008, 5.1.2 NOTE), the
/// derivatives taken symbolically. With S the covariance matrix of the inputs, c the gradient, H the matrix of second
/// and T the third derivatives, all at the estimates:
/// <code>u² = c S c + ½ tr(H S H S) + sum over i, k, l of (S c)_i T_ikl S_kl</code>
/// For independent inputs this is the NOTE's equation; the terms with correlation are those of normal inputs.
/// </summary>
public static class SecondOrder
{
    /// <summary>Combined standard uncertainty with second-order terms, in the unit of the result.</summary>
    /// <exception cref="UndefinedResultException">The model has no value or no derivative at the estimates (a corner
    /// of abs, min or max), or the terms of higher order outweigh the first so far that the variance comes out
    /// negative: then only Monte Carlo answers.</exception>
    public static double StandardUncertainty(MeasurementModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var derivatives = new ModelDerivatives(model);
        double[,] covariance = CovarianceOf(model, derivatives.InputPlaces);
        double[] gradient = derivatives.Gradient();
        double[,] curvature = derivatives.Curvature();
        double variance = Linear(gradient, covariance) + Quadratic(curvature, covariance)
            + Cubic(derivatives, gradient, covariance);
        CheckedMath.Finite("second-order propagation", variance);
        return variance >= 0 ? Math.Sqrt(variance) : throw CheckedMath.Fault(
            "second-order propagation",
            "the terms of higher order outweigh the first-order ones: the variance would be negative");
    }

    private static double[,] CovarianceOf(MeasurementModel model, int[] places)
    {
        double[,] correlation = model.CorrelationMatrix();
        var covariance = new double[places.Length, places.Length];
        for (int i = 0; i < places.Length; i++)
        {
            for (int j = 0; j < places.Length; j++)
            {
                covariance[i, j] = correlation[places[i], places[j]]
                    * model.Inputs[places[i]].Distribution.StandardUncertainty
                    * model.Inputs[places[j]].Distribution.StandardUncertainty;
            }
        }

        return covariance;
    }

    private static double Linear(double[] gradient, double[,] covariance)
    {
        double sum = 0;
        for (int i = 0; i < gradient.Length; i++)
        {
            sum += gradient[i] * Row(covariance, i, gradient);
        }

        return sum;
    }

    private static double Quadratic(double[,] curvature, double[,] covariance)
    {
        int size = covariance.GetLength(0);
        var product = new double[size, size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < size; j++)
            {
                for (int k = 0; k < size; k++)
                {
                    product[i, j] += curvature[i, k] * covariance[k, j];
                }
            }
        }

        double trace = 0;
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < size; j++)
            {
                trace += product[i, j] * product[j, i];
            }
        }

        return trace / 2;
    }

    private static double Cubic(ModelDerivatives derivatives, double[] gradient, double[,] covariance)
    {
        double sum = 0;
        for (int i = 0; i < gradient.Length; i++)
        {
            double pull = Row(covariance, i, gradient);
            for (int k = 0; k < gradient.Length; k++)
            {
                for (int l = 0; l < gradient.Length; l++)
                {
                    if (pull != 0 && covariance[k, l] != 0)
                    {
                        sum += pull * derivatives.Third(k, l, i) * covariance[k, l];
                    }
                }
            }
        }

        return sum;
    }

    private static double Row(double[,] matrix, int row, double[] vector)
    {
        double sum = 0;
        for (int column = 0; column < vector.Length; column++)
        {
            sum += matrix[row, column] * vector[column];
        }

        return sum;
    }
}
