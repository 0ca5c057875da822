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
    private readonly bool[] said;

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
        said = new bool[laws.Length];
        foreach (string id in conditions ?? [])
        {
            Apply(practical.Conditions.FirstOrDefault(c => c.Id == id)
                ?? throw new ArgumentException($"{practical.Id} has no condition '{id}'.", nameof(conditions)));
        }
    }

    private Circumstances(Circumstances usual, double[] rates, ParameterLaw[] laws, Arm? arm)
    {
        Practical = usual.Practical;
        this.rates = rates;
        this.laws = laws;
        said = usual.said;
        Arm = arm;
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>The arm that these groups do; null for the ordinary way.</summary>
    public Arm? Arm { get; }

    /// <summary>The same class's groups that do one of the practical's arms: what the arm sets stands over what is said of the class.</summary>
    /// <param name="arm">The arm; null for the ordinary way.</param>
    public Circumstances InArm(Arm? arm) => arm is null ? this : new Circumstances(
        this, rates, [.. laws.Select((law, p) => arm.Set.FirstOrDefault(s => s.Parameter == Practical.Parameters[p].Id)?.Law ?? law)], arm);

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
        return new Circumstances(this, [.. rates.Select(Grown)], laws, Arm);

        double Grown(double rate, int fault) => amounts.Grows.TryGetValue(Practical.Faults[fault].Cause, out double power)
            ? Math.Min(Math.Max(rate, MostOften), rate * Math.Pow(relative, power))
            : rate;
    }

    /// <summary>The same class where some causes never befall a group.</summary>
    /// <param name="causes">Their ids.</param>
    public Circumstances Without(IReadOnlySet<string> causes)
    {
        ArgumentNullException.ThrowIfNull(causes);
        return new Circumstances(this, [.. rates.Select((rate, fault) => causes.Contains(Practical.Faults[fault].Cause) ? 0 : rate)], laws, Arm);
    }

    /// <summary>Share of the groups in which a fault happens, 0 to 1, by its place in the practical's list.</summary>
    public double RateOf(int fault) => rates[fault];

    /// <summary>The law that a parameter follows in a group without faults, by its place in the practical's list.</summary>
    public ParameterLaw LawOf(int parameter) => laws[parameter];

    /// <summary>Whether no condition says what a parameter is in this class.</summary>
    public bool IsOpen(int parameter) => !said[parameter];

    private void Apply(ConditionDefinition condition)
    {
        for (int f = 0; f < rates.Length; f++)
        {
            rates[f] = condition.Rates.GetValueOrDefault(Practical.Faults[f].Cause, rates[f]);
        }

        for (int p = 0; p < laws.Length; p++)
        {
            string id = Practical.Parameters[p].Id;
            if (condition.Settings.FirstOrDefault(s => s.Parameter == id)?.Law is ParameterLaw law)
            {
                (laws[p], said[p]) = (law, true);
            }
        }
    }
}
