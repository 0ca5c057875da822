using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// What the readings themselves tell, under normal priors: how far each instrument other than a balance is off, the masses of
/// parts that always stand on the pan together, and the amounts put in. Integrated out in closed form at every point.
/// </summary>
internal sealed class Unknowns
{
    private readonly double[,] parts;

    /// <summary>Finds them for the weighings of a practical.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="weighings">The weighings of the walk.</param>
    /// <param name="amounts">Prior of each amount.</param>
    /// <param name="shown">What was read at a weighing of a gauge, about; 0 where nothing was.</param>
    public Unknowns(Practical practical, IReadOnlyList<Weighing> weighings, IReadOnlyList<AmountPrior> amounts, Func<int, double> shown)
    {
        InstrumentColumn[] instruments = [.. InstrumentColumn.Of(practical, weighings, shown)];
        Instruments = instruments.Length;
        // Parts that are on the pan at just the same weighings cannot be told apart, and need not be.
        var together = practical.Parts
            .GroupBy(part => string.Concat(weighings.Select(w => Has(w, part) ? '1' : '0')), StringComparer.Ordinal)
            .Where(group => group.Key.Contains('1', StringComparison.Ordinal)).ToArray();
        Parts = Instruments + together.Length;
        Count = Parts + amounts.Count;
        Means = new double[Count];
        Precisions = new double[Count];
        parts = new double[weighings.Count, Parts];
        for (int c = 0; c < Instruments; c++)
        {
            Precisions[c] = 1 / (instruments[c].StandardUncertainty * instruments[c].StandardUncertainty);
            for (int i = 0; i < weighings.Count; i++)
            {
                parts[i, c] = instruments[c].Factors[i];
            }
        }

        for (int c = Instruments; c < Parts; c++)
        {
            var alike = together[c - Instruments];
            Means[c] = alike.Sum(p => p.Mass.Typical);
            double spread = alike.Sum(p => p.Mass.High - p.Mass.Low);
            Precisions[c] = 1 / (spread * spread);
            for (int i = 0; i < weighings.Count; i++)
            {
                parts[i, c] = alike.Key[i] == '1' ? 1 : 0;
            }
        }

        for (int a = 0; a < amounts.Count; a++)
        {
            Means[Parts + a] = amounts[a].Mean;
            Precisions[Parts + a] = 1 / (amounts[a].StandardDeviation * amounts[a].StandardDeviation);
        }

        bool Has(Weighing weighing, Part part) => practical.Reading(weighing.Reading).Pan.Parts.Contains(part.Id);
    }

    /// <summary>One vessel on the pan at every weighing, and one amount.</summary>
    /// <param name="weighings">How many weighings.</param>
    /// <param name="vessel">Prior of the vessel.</param>
    /// <param name="amount">Prior of the amount.</param>
    public Unknowns(int weighings, AmountPrior vessel, AmountPrior amount)
    {
        Parts = 1;
        Count = 2;
        Means = [vessel.Mean, amount.Mean];
        Precisions = [Math.Pow(vessel.StandardDeviation, -2), Math.Pow(amount.StandardDeviation, -2)];
        parts = new double[weighings, 1];
        for (int i = 0; i < weighings; i++)
        {
            parts[i, 0] = 1;
        }
    }

    /// <summary>Columns of instruments: the first.</summary>
    public int Instruments { get; }

    /// <summary>Columns of instruments and parts: all before the amounts.</summary>
    public int Parts { get; }

    /// <summary>Parts and amounts.</summary>
    public int Count { get; }

    /// <summary>Prior means in g.</summary>
    public double[] Means { get; }

    /// <summary>Prior precisions in 1/g².</summary>
    public double[] Precisions { get; }

    /// <summary>1 where the parts of a column are on the pan at a weighing, else 0; of an instrument by how much a reading moves
    /// with it.</summary>
    public double PartAt(int weighing, int column) => parts[weighing, column];
}
