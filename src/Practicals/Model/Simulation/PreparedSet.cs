using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>A set of faults with what drawing a group needs of it, looked up once.</summary>
internal sealed class PreparedSet
{
    /// <summary>Looks it up.</summary>
    public PreparedSet(FaultSet set, LatentSpace space, LawTables laws, Practical practical, Func<int, Range> rangeOf)
    {
        Faults = [.. set.Faults];
        Even = space.CountOf(set);
        Pen = Faults.Select(f => practical.Faults[f].Effect).OfType<FaultEffect.Pen>().FirstOrDefault();
        var quantiles = new List<Func<double, double>>();
        for (int p = 0; p < practical.Parameters.Count; p++)
        {
            Func<double, double> quantile = laws.Quantile(space.LawOf(set, p));
            Range range = rangeOf(p);
            quantiles.AddRange(Enumerable.Repeat(quantile, range.End.Value - range.Start.Value));
        }

        Quantiles = [.. quantiles];
        // What a fault sets is the group's own, whatever the class shares.
        Shared =
        [
            .. Enumerable.Range(0, practical.Parameters.Count).Where(p => practical.Parameters[p].Shared && !space.IsSetBy(set, p))
                .SelectMany(p => Enumerable.Range(0, quantiles.Count).Take(rangeOf(p))),
        ];
    }

    /// <summary>The faults, by their places in the practical's list.</summary>
    public int[] Faults { get; }

    /// <summary>How many evenly drawn numbers a group needs.</summary>
    public int Even { get; }

    /// <summary>For each number of the walk, how an evenly drawn number becomes it.</summary>
    public Func<double, double>[] Quantiles { get; }

    /// <summary>Places of the numbers that the whole class shares.</summary>
    public int[] Shared { get; }

    /// <summary>The slip of the pen among the faults, or null.</summary>
    public FaultEffect.Pen? Pen { get; }
}
