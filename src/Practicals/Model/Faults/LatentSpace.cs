using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Faults;

/// <summary>
/// Everything that is hidden in one group, as evenly spread numbers between 0 and 1: first one for each number of the
/// walk, then those of the faults that add to what a weighing shows. The same numbers give the same group whether they
/// are drawn (a simulated class) or laid out evenly (the search for causes).
/// </summary>
internal sealed class LatentSpace
{
    private readonly Circumstances circumstances;
    private readonly BenchDimensions dimensions;
    private readonly ShiftFault?[] shifts;

    /// <summary>Lays out the numbers of a practical.</summary>
    public LatentSpace(Circumstances circumstances, BenchProgram program)
    {
        this.circumstances = circumstances;
        dimensions = program.Dimensions;
        HashSet<string> weighed = [.. circumstances.Practical.Readings.Where(r => r.IsWeighing).Select(r => r.Id)];
        shifts = [.. circumstances.Practical.Faults.Select(f => ShiftFault.Find(f.Effect, weighed))];
    }

    /// <summary>How many numbers a group with these faults needs.</summary>
    public int CountOf(FaultSet set) => dimensions.Count + set.Faults.Sum(f => shifts[f]?.Dimensions ?? 0);

    /// <summary>Whether one of the faults sets a parameter.</summary>
    public bool IsSetBy(FaultSet set, int parameter) => set.Faults.Any(f => circumstances.Practical.Faults[f].Effect is FaultEffect.Set effect
        && effect.Settings.Any(s => s.Parameter == circumstances.Practical.Parameters[parameter].Id));

    /// <summary>The law behind a number of the walk.</summary>
    public ParameterLaw LawOf(FaultSet set, int parameter)
    {
        string id = circumstances.Practical.Parameters[parameter].Id;
        foreach (int fault in set.Faults)
        {
            if (circumstances.Practical.Faults[fault].Effect is FaultEffect.Set effect
                && effect.Settings.FirstOrDefault(s => s.Parameter == id) is ParameterSetting setting)
            {
                return setting.Law;
            }
        }

        return circumstances.LawOf(parameter);
    }

    /// <summary>The numbers of the walk.</summary>
    /// <param name="set">The faults at work.</param>
    /// <param name="even">Numbers between 0 and 1.</param>
    /// <param name="quantile">How a law turns one into a number of the bench.</param>
    /// <param name="values">What a walk needs.</param>
    public void Values(FaultSet set, ReadOnlySpan<double> even, Func<ParameterLaw, double, double> quantile, Span<double> values)
    {
        for (int p = 0; p < circumstances.Practical.Parameters.Count; p++)
        {
            ParameterLaw law = LawOf(set, p);
            Range range = dimensions.RangeOf(p);
            for (int i = range.Start.Value; i < range.End.Value; i++)
            {
                values[i] = quantile(law, even[i]);
            }
        }
    }

    /// <summary>What one fault adds to each weighing, in g; nothing for a fault that changes parameters.</summary>
    /// <param name="set">The faults at work.</param>
    /// <param name="fault">One of them.</param>
    /// <param name="even">Numbers between 0 and 1.</param>
    /// <param name="quantile">How a law turns one into a number of the bench.</param>
    /// <param name="weighings">The weighings of the walk.</param>
    /// <param name="shift">Of each weighing; cleared first.</param>
    /// <param name="among">It begins at one of the first so many weighings; all of them unless given.</param>
    public void Shift(
        FaultSet set,
        int fault,
        ReadOnlySpan<double> even,
        Func<ParameterLaw, double, double> quantile,
        IReadOnlyList<Weighing> weighings,
        Span<double> shift,
        int? among = null)
    {
        shift.Clear();
        if (shifts[fault] is not ShiftFault kind)
        {
            return;
        }

        int first = dimensions.Count + set.Faults.Where(f => f < fault).Sum(f => shifts[f]?.Dimensions ?? 0);
        kind.AddTo(even.Slice(first, kind.Dimensions), quantile, weighings, among ?? weighings.Count, shift);
    }
}
