namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Points spread evenly over a cube of many dimensions: the additive recurrence frac(½ + i·a) whose steps a are powers of the
/// root of x^(d+1) = x + 1. The i-th point does not depend on how many there are, and no two coordinates keep step.
/// </summary>
internal sealed class EvenPoints
{
    private readonly double[] steps;

    /// <summary>Prepares points of a dimension.</summary>
    public EvenPoints(int dimensions)
    {
        double root = 1.5;
        for (int i = 0; i < 64; i++)
        {
            root = Math.Pow(1 + root, 1.0 / (dimensions + 1));
        }

        steps = new double[dimensions];
        double step = 1;
        for (int i = 0; i < dimensions; i++)
        {
            step /= root;
            steps[i] = step;
        }
    }

    /// <summary>One coordinate, above 0 and below 1.</summary>
    public double At(int point, int dimension)
    {
        double value = 0.5 + ((point + 1.0) * steps[dimension]);
        return value - Math.Floor(value);
    }
}
