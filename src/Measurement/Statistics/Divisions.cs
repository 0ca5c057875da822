using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// The ways to divide values, given as distances from their common mean, into a first list of a given size and the rest.
/// The difference of means is a fixed multiple of the sum of the first list, so sums are compared.
/// </summary>
internal sealed class Divisions(double[] offsets, int size)
{
    private readonly double observed = offsets.Take(size).Sum();

    /// <summary>Sums that differ by rounding only are ties, and ties count for the tail.</summary>
    private readonly double tie = 1e-12 * offsets.Sum(Math.Abs);

    private double upper;
    private double lower;
    private double far;

    /// <summary>How many there are; as a double, since there may be very many.</summary>
    public double Count
    {
        get
        {
            double count = 1;
            for (int i = 1; i <= Math.Min(size, offsets.Length - size); i++)
            {
                count *= (offsets.Length - i + 1.0) / i;
            }

            return Math.Round(count);
        }
    }

    public PermutationTails CountAll()
    {
        (upper, lower, far) = (0, 0, 0);
        Choose(0, size, 0);
        double all = Count;
        return new PermutationTails(upper / all, lower / all, far / all);
    }

    public PermutationTails Sample(RandomStream random, int draws)
    {
        (upper, lower, far) = (1, 1, 1);
        double[] deck = [.. offsets];
        for (int draw = 0; draw < draws; draw++)
        {
            Take(DealtSum(deck, random));
        }

        double all = draws + 1.0;
        return new PermutationTails(upper / all, lower / all, far / all);
    }

    private void Choose(int from, int left, double sum)
    {
        if (left == 0)
        {
            Take(sum);
            return;
        }

        for (int i = from; i <= offsets.Length - left; i++)
        {
            Choose(i + 1, left - 1, sum + offsets[i]);
        }
    }

    private void Take(double sum)
    {
        upper += sum >= observed - tie ? 1 : 0;
        lower += sum <= observed + tie ? 1 : 0;
        far += Math.Abs(sum) >= Math.Abs(observed) - tie ? 1 : 0;
    }

    // Only the first list need be dealt: the start of a Fisher-Yates shuffle.
    private double DealtSum(double[] deck, RandomStream random)
    {
        double sum = 0;
        for (int i = 0; i < size; i++)
        {
            int other = i + random.NextInt(deck.Length - i);
            (deck[i], deck[other]) = (deck[other], deck[i]);
            sum += deck[i];
        }

        return sum;
    }
}
