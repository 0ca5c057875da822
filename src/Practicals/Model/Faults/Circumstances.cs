using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>A class's circumstances: how often each fault befalls a group and which law each parameter follows, once what is
/// said of the class ('crucibles fired', 'a careful class') has overridden the practical's own numbers.</summary>
public sealed class Circumstances
{
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

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

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
