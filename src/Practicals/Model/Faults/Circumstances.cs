using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>A class's circumstances: how often each fault befalls a group and which law each parameter follows, once what is
/// said of the class ('crucibles fired', 'a careful class') has overridden the practical's own numbers.</summary>
public sealed class Circumstances
{
    /// <summary>No amount of sample makes a fault commoner than this (judgement).</summary>
    public const double MostOften = 0.9;

    private readonly double[] rates;
    private readonly ParameterLaw[] laws;

    /// <summary>Takes a practical's own numbers, overridden by conditions in the order given.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="conditions">Ids of its conditions; empty for an ordinary class.</param>
    /// <exception cref="ArgumentException">The practical has no such condition.</exception>
    public Circumstances(Practical practical, IReadOnlyList<string>? conditions = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        Practical = practical;
        rates = [.. practical.Faults.Select(f => f.Rate)];
        laws = [.. practical.Parameters.Select(p => p.Law)];
        foreach (string id in conditions ?? [])
        {
            Apply(practical.Conditions.FirstOrDefault(c => c.Id == id)
                ?? throw new ArgumentException($"{practical.Id} has no condition '{id}'.", nameof(conditions)));
        }
    }

    private Circumstances(Circumstances usual, double[] rates)
    {
        Practical = usual.Practical;
        this.rates = rates;
        laws = usual.laws;
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>The same class with another amount of sample: what the practical says comes oftener with more of it does,
    /// up to <see cref="MostOften"/>.</summary>
    /// <param name="sampleInGrams">The usual mass of a sample, above 0.</param>
    public Circumstances ForSample(double sampleInGrams)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sampleInGrams);
        if (Practical.Amounts is not AmountsDefinition amounts)
        {
            return this;
        }

        double relative = sampleInGrams / amounts.UsualInGrams;
        return new Circumstances(this, [.. rates.Select(Grown)]);

        double Grown(double rate, int fault) => amounts.Grows.TryGetValue(Practical.Faults[fault].Cause, out double power)
            ? Math.Min(Math.Max(rate, MostOften), rate * Math.Pow(relative, power))
            : rate;
    }

    /// <summary>The same class where some causes never befall a group.</summary>
    /// <param name="causes">Their ids.</param>
    public Circumstances Without(IReadOnlySet<string> causes)
    {
        ArgumentNullException.ThrowIfNull(causes);
        return new Circumstances(this, [.. rates.Select((rate, fault) => causes.Contains(Practical.Faults[fault].Cause) ? 0 : rate)]);
    }

    /// <summary>Share of the groups in which a fault happens, 0 to 1, by its place in the practical's list.</summary>
    public double RateOf(int fault) => rates[fault];

    /// <summary>The law that a parameter follows in a group without faults, by its place in the practical's list.</summary>
    public ParameterLaw LawOf(int parameter) => laws[parameter];

    private void Apply(ConditionDefinition condition)
    {
        for (int f = 0; f < rates.Length; f++)
        {
            rates[f] = condition.Rates.GetValueOrDefault(Practical.Faults[f].Cause, rates[f]);
        }

        for (int p = 0; p < laws.Length; p++)
        {
            string id = Practical.Parameters[p].Id;
            laws[p] = condition.Settings.FirstOrDefault(s => s.Parameter == id)?.Law ?? laws[p];
        }
    }
}
