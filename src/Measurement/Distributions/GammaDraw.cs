namespace Calx.Measurement.Distributions;

/// <summary>Draws of gamma variables with scale 1, by Marsaglia and Tsang (2000, <i>A simple method for generating gamma
/// variables</i>).</summary>
internal static class GammaDraw
{
    /// <summary>A draw with the given shape, above 0.</summary>
    public static double Next(RandomStream stream, double shape)
        => shape >= 1 ? FromOneOn(stream, shape) : Math.Exp(NextLog(stream, shape));

    /// <summary>The logarithm of a draw: for a small shape the draw itself may be below the smallest double.</summary>
    public static double NextLog(RandomStream stream, double shape) => shape >= 1
        ? Math.Log(FromOneOn(stream, shape))
        : Math.Log(FromOneOn(stream, shape + 1)) + (Math.Log(stream.NextDouble()) / shape);

    private static double FromOneOn(RandomStream stream, double shape)
    {
        double d = shape - (1.0 / 3);
        double c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            double z = stream.NextNormal();
            double root = 1 + (c * z);
            if (root <= 0)
            {
                continue;
            }

            double v = root * root * root;
            if (Math.Log(stream.NextDouble()) < (z * z / 2) + (d * (1 - v + Math.Log(v))))
            {
                return d * v;
            }
        }
    }
}
