using System.Globalization;
using System.Text;
using Calx.Measurement.Distributions;

namespace Calx.Bench.Benchmarks;

/// <summary>
/// The weighings of an invented class as the bytes of a CSV file: 0.26 g of magnesium, some of it not burnt at the first
/// heating, on a balance of 0.01 g.
/// </summary>
internal static class ClassFileText
{
    private const double OxygenToOneOfMagnesium = 15.999 / 24.305;

    public static byte[] Bytes(int groups)
    {
        var random = new RandomStream(7, 0);
        var text = new StringBuilder(
            "Group,Mass of empty crucible and lid / g,Mass before heating / g,Mass after heating / g,Mass after reheating / g\n");
        for (int group = 1; group <= groups; group++)
        {
            double empty = 30 + (2 * random.NextNormal());
            double sample = 0.26 + (0.02 * random.NextNormal());
            double gain = sample * OxygenToOneOfMagnesium;
            double first = 0.9 + (0.1 * random.NextDouble());
            double second = 1 - (0.02 * random.NextDouble());
            text.Append(CultureInfo.InvariantCulture, $"Group {group}");
            foreach (double mass in (double[])[empty, empty + sample, empty + sample + (first * gain), empty + sample + (second * gain)])
            {
                text.Append(CultureInfo.InvariantCulture, $",{mass + (0.005 * random.NextNormal()):F2}");
            }

            text.Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
