using System.Globalization;
using Calx.Papers.Charts;

namespace Calx.Papers.Tests.Charts;

/// <summary>WCAG 2.2: text 4.5 : 1 (1.4.3), shapes that carry meaning 3 : 1 (1.4.11), by its definition of relative
/// luminance.</summary>
public class ContrastTests
{
    [Theory]
    [InlineData("ink", "paper", 4.5)]
    [InlineData("quiet", "paper", 4.5)]
    [InlineData("mark", "paper", 4.5)]
    [InlineData("odd", "paper", 4.5)]
    [InlineData("theory", "paper", 4.5)]
    [InlineData("mark", "band", 3)]
    [InlineData("theory", "band", 3)]
    [InlineData("odd", "band", 3)]
    public void Colours_stand_out_in_light_and_in_dark(string front, string behind, double least)
    {
        foreach (string colours in new[] { ChartStyle.Light, ChartStyle.Dark })
        {
            double a = Luminance(Colour(colours, front));
            double b = Luminance(Colour(colours, behind));
            double contrast = (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
            Assert.True(contrast >= least, string.Create(CultureInfo.InvariantCulture, $"{front} on {behind}: {contrast:F2}"));
        }
    }

    private static string Colour(string colours, string name) =>
        colours.Split(';').Single(c => c.StartsWith($"--{name}:#", StringComparison.Ordinal))[(name.Length + 4)..];

    private static double Luminance(string colour) =>
        (0.2126 * Linear(colour[0..2])) + (0.7152 * Linear(colour[2..4])) + (0.0722 * Linear(colour[4..6]));

    private static double Linear(string part)
    {
        double c = int.Parse(part, NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
