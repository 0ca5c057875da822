using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference;

/// <summary>
/// What can be found from one set of readings, whatever their digits: made once for each set of readings that occurs
/// in a class, then used for every group that has it.
/// </summary>
internal sealed class ReadingPattern
{
    private readonly Dictionary<string, double[]> weights = new(StringComparer.Ordinal);
    private readonly ReadingRows rows;
    private readonly RowSpace space;
    private readonly double[][] solution;

    /// <summary>Works out what the readings determine.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="readingIds">Readings taken, such as <c>empty</c>, <c>after2</c>.</param>
    /// <param name="columnIds">Ready-made masses given; those that repeat what the readings say are left out.</param>
    /// <param name="repeats">Rounds of the repeated step that these ids imply, at least 1.</param>
    public ReadingPattern(Practical practical, IEnumerable<string> readingIds, IEnumerable<string> columnIds, int repeats)
    {
        rows = new ReadingRows(practical, repeats);
        space = new RowSpace(rows.Width);
        var used = new List<string>();
        var repeated = new List<string>();
        foreach (string id in readingIds.Concat(columnIds))
        {
            // An id without a row (a reading that the procedure never takes) is the definition's fault, named on load.
            double[]? row = rows.RowOf(id);
            if (row is not null)
            {
                (space.TryAdd(row) ? used : repeated).Add(id);
            }
        }

        Used = used;
        Repeated = repeated;
        solution = space.ParticularSolution();
        foreach (ReadingDefinition reading in practical.Readings)
        {
            weights[reading.Id] = WeightsOf(rows.RowOf(rows.LastOf(reading.Id)) ?? new double[rows.Width]);
        }
    }

    /// <summary>The readings and columns that the estimates rest on, in order.</summary>
    public IReadOnlyList<string> Used { get; }

    /// <summary>The ids whose mass the others already determine.</summary>
    public IReadOnlyList<string> Repeated { get; }

    /// <summary>Weights of <see cref="Used"/> in a reading of a formula (its last weighing). Only combinations that the
    /// readings determine have a meaning; see <see cref="Determines"/>.</summary>
    public double[] WeightsOfReading(string readingId) => weights[readingId];

    /// <summary>The weights of <see cref="Used"/> in a ready-made column or weighing, or null where they do not
    /// determine it.</summary>
    public double[]? Predict(string id) =>
        rows.RowOf(id) is double[] row && space.TryExpress(row, out double[] found) ? found : null;

    /// <summary>Whether the readings determine a formula: its gradient lies in their row space, tried at a point of the
    /// unknowns without special relations.</summary>
    public bool Determines(QuantityProgram formula)
    {
        double[] generic = [.. Enumerable.Range(0, rows.Width).Select(i => Math.Sqrt(2 + 3 * i + i * i % 7))];
        double[][] symbols = [.. formula.Names.Select(name => rows.RowOf(rows.LastOf(name)) ?? new double[rows.Width])];
        Span<double> point = stackalloc double[formula.Width];
        point.Fill(Math.Sqrt(401));
        for (int s = 0; s < symbols.Length; s++)
        {
            point[s] = symbols[s].Zip(generic, (share, mass) => share * mass).Sum();
        }

        Span<double> gradient = stackalloc double[formula.Width];
        formula.Evaluate(point, gradient);
        double[] target = new double[rows.Width];
        for (int s = 0; s < symbols.Length; s++)
        {
            for (int j = 0; j < rows.Width; j++)
            {
                target[j] += gradient[s] * symbols[s][j];
            }
        }

        return space.TryExpress(target, out _);
    }

    private double[] WeightsOf(double[] row)
    {
        double[] combined = new double[Used.Count];
        for (int unknown = 0; unknown < row.Length; unknown++)
        {
            for (int reading = 0; row[unknown] != 0 && reading < combined.Length; reading++)
            {
                combined[reading] += row[unknown] * solution[unknown][reading];
            }
        }

        return combined;
    }
}
