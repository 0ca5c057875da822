using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>
/// By how much an outcome is expected to lessen the entropy of the cause: the mutual information of the two, in bits
/// (D. V. Lindley, On a measure of the information provided by an experiment, Annals of Mathematical Statistics 27, 1956).
/// </summary>
internal static class InformationGain
{
    /// <summary>Of an outcome that is one of a few.</summary>
    /// <param name="outlook">The group.</param>
    /// <param name="outcomes">Probability of each outcome for an atom; they add up to 1.</param>
    public static double OfFew(Outlook outlook, Func<Atom, double[]> outcomes)
    {
        var table = new Dictionary<FaultSet, double[]>();
        foreach (Atom atom in outlook.Atoms)
        {
            double[] share = outcomes(atom);
            double[] row = RowOf(table, atom.Counting, share.Length);
            for (int i = 0; i < share.Length; i++)
            {
                row[i] += atom.Weight * share[i];
            }
        }

        return Mutual(table);
    }

    /// <summary>Of a further weighing.</summary>
    /// <param name="outlook">The group.</param>
    /// <param name="shown">What an atom lets expect, in g.</param>
    /// <param name="deviationInGrams">Standard deviation of the weighing about it.</param>
    /// <param name="widthInGrams">Width of the cells into which the weighing falls.</param>
    public static double OfWeighing(Outlook outlook, Func<Atom, double> shown, double deviationInGrams, double widthInGrams)
    {
        double[] means = [.. outlook.Atoms.Select(shown)];
        double centre = Enumerable.Range(0, means.Length).Sum(i => outlook.Atoms[i].Weight * means[i]) / outlook.Sum;
        var table = new Dictionary<FaultSet, double[]>();
        int half = MostCells / 2;
        int reach = (int)Math.Ceiling(4 * deviationInGrams / widthInGrams);
        for (int k = 0; k < means.Length; k++)
        {
            double[] row = RowOf(table, outlook.Atoms[k].Counting, MostCells);
            double place = half + ((means[k] - centre) / widthInGrams);
            Spread(row, place, deviationInGrams / widthInGrams, reach, outlook.Atoms[k].Weight);
        }

        return Mutual(table);
    }

    /// <summary>Cells of a further weighing; what lies beyond falls into the outermost.</summary>
    private const int MostCells = 1024;

    private static void Spread(double[] row, double place, double deviation, int reach, double weight)
    {
        int middle = (int)Math.Clamp(Math.Round(place), 0, row.Length - 1);
        Span<double> share = stackalloc double[(2 * reach) + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++)
        {
            double away = (middle + i - Math.Clamp(place, 0, row.Length - 1)) / deviation;
            share[i + reach] = Math.Exp(-away * away / 2);
            sum += share[i + reach];
        }

        for (int i = -reach; i <= reach; i++)
        {
            row[Math.Clamp(middle + i, 0, row.Length - 1)] += weight * share[i + reach] / sum;
        }
    }

    private static double[] RowOf(Dictionary<FaultSet, double[]> table, FaultSet counting, int length)
    {
        if (!table.TryGetValue(counting, out double[]? row))
        {
            table[counting] = row = new double[length];
        }

        return row;
    }

    private static double Mutual(Dictionary<FaultSet, double[]> table)
    {
        double total = table.Values.Sum(row => row.Sum());
        double[] column = new double[table.Values.First().Length];
        foreach (double[] row in table.Values)
        {
            for (int i = 0; i < row.Length; i++)
            {
                column[i] += row[i] / total;
            }
        }

        double bits = 0;
        foreach (double[] row in table.Values)
        {
            double cause = row.Sum() / total;
            for (int i = 0; i < row.Length; i++)
            {
                double both = row[i] / total;
                bits += both > 0 ? both * Math.Log2(both / (cause * column[i])) : 0;
            }
        }

        return Math.Max(0, bits);
    }
}
