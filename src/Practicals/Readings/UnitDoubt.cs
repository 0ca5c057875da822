using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>Asks about a number that lies by just such a factor off its column as two units of its quantity do: 20 among 1200 is
/// minutes among seconds. It is kept as written.</summary>
internal static class UnitDoubt
{
    // Fewer groups than three cannot outvote one.
    private const int FewestGroups = 3;

    // Groups of one class differ by this much and less; a minute is sixty seconds.
    private const double Near = 1.4;

    private static readonly int[] Factors = [60, 1000];

    /// <summary>Tells of every such number.</summary>
    public static void Tell(TableIntake intake)
    {
        var columns = intake.Groups.SelectMany(g => g.Readings).Where(r => r.Column.Kind == ExpectedKind.Gauge).GroupBy(r => r.Id, StringComparer.Ordinal);
        foreach (RawReading[] column in columns.Select(c => c.ToArray()).Where(c => c.Length >= FewestGroups))
        {
            decimal[] sorted = [.. column.Select(r => r.Value.Value).Order()];
            double median = (double)sorted[sorted.Length / 2];
            foreach (RawReading reading in column.Where(r => r.Value.Value > 0 && median > 0))
            {
                double ratio = median / (double)reading.Value.Value;
                foreach (int factor in Factors.Where(f => Lies(ratio, f) || Lies(1 / ratio, f)))
                {
                    string times = factor.InFigures();
                    string text = reading.Written.Text.Trim();
                    intake.Note(ratio > 1 ? intake.Texts.TimesSmaller(text, times) : intake.Texts.TimesLarger(text, times), reading.Cell);
                }
            }
        }
    }

    private static bool Lies(double ratio, double factor) => ratio > factor / Near && ratio < factor * Near;
}
