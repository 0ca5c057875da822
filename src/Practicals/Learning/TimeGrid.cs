namespace Calx.Practicals.Learning;

/// <summary>Even points on the scale of ln t, from the file's own mean, and functions of them.</summary>
internal static class TimeGrid
{
    /// <summary>A time twenty times as long as the file's, or a twentieth, is the farthest that is believed.</summary>
    public const double Reach = 3;

    public const double Step = 0.02;

    public const int Points = 301;

    /// <summary>Beyond so many standard deviations a normal law is taken as 0.</summary>
    private const double Tails = 5;

    public static double At(int i) => (i * Step) - Reach;

    /// <summary>The mean of a function about each point under a normal law: at its ends it goes on as it is there.</summary>
    public static double[] Smoothed(double[] values, double deviation)
    {
        int width = (int)Math.Ceiling(Tails * deviation / Step);
        if (deviation < Step / 4)
        {
            return values;
        }

        double[] kernel = Kernel(deviation, width);
        double[] result = new double[Points];
        for (int i = 0; i < Points; i++)
        {
            double sum = 0;
            for (int d = -width; d <= width; d++)
            {
                sum += kernel[d + width] * values[Math.Clamp(i + d, 0, Points - 1)];
            }

            result[i] = sum;
        }

        return result;
    }

    private static double[] Kernel(double deviation, int width)
    {
        double[] kernel = new double[(2 * width) + 1];
        double total = 0;
        for (int d = -width; d <= width; d++)
        {
            double z = d * Step / deviation;
            kernel[d + width] = Math.Exp(-0.5 * z * z);
            total += kernel[d + width];
        }

        for (int d = 0; d < kernel.Length; d++)
        {
            kernel[d] /= total;
        }

        return kernel;
    }
}
