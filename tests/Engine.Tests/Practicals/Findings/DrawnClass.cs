using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Distributions;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>Invented classes that burn magnesium.</summary>
internal static class DrawnClass
{
    /// <summary>Groups with nothing wrong but the share of metal that reacted, read on a two-decimal balance.</summary>
    public static IEnumerable<GroupReadings> Of(int groups, double reacted, ulong seed)
    {
        var stream = new RandomStream(seed, 0);
        for (int g = 0; g < groups; g++)
        {
            double empty = 28 + 5 * stream.NextDouble();
            double sample = 0.20 + 0.08 * stream.NextDouble();
            double[] masses = [empty, empty + sample, empty + sample + 0.65826 * reacted * sample];
            string[] digits = [.. masses.Select(m => $"{Math.Round((m + 0.007 * stream.NextNormal()) * 100) / 100:F2}")];
            yield return Given.Group($"{g + 1}", ("empty", digits[0]), ("before", digits[1]), ("after", digits[2]));
        }
    }
}
