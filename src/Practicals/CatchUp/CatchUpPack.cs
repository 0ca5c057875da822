using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.CatchUp;

/// <summary>A student's own data with all that is true of them.</summary>
public sealed class CatchUpPack
{
    internal CatchUpPack(
        CatchUpStudent student,
        IReadOnlyList<PackReading> readings,
        PackTruth truth,
        IReadOnlyList<PackDecision> decisions,
        IReadOnlyList<PackAnswer> answers,
        IReadOnlyList<(QuantityDefinition Quantity, double? Value)> trueValues)
    {
        Student = student;
        Readings = readings;
        Truth = truth;
        Decisions = decisions;
        Answers = answers;
        TrueValues = trueValues;
    }

    /// <summary>Whose they are.</summary>
    public CatchUpStudent Student { get; }

    /// <summary>The weighings in order, to the last heating that the practical allows.</summary>
    public IReadOnlyList<PackReading> Readings { get; }

    /// <summary>Mass against time as the balance showed it, or null where the practical takes none.</summary>
    public GroupSeries? Series { get; init; }

    /// <summary>What went wrong.</summary>
    public PackTruth Truth { get; }

    /// <summary>The sensible decision after each heating; empty where the practical heats nothing to constant mass.</summary>
    public IReadOnlyList<PackDecision> Decisions { get; }

    /// <summary>The answers for one who stops after each heating, in the practical's order; without those that the plan's readings do not
    /// give.</summary>
    public IReadOnlyList<PackAnswer> Answers { get; }

    /// <summary>The practical's quantities as the true masses give them after the last heating; null where they have no value.</summary>
    public IReadOnlyList<(QuantityDefinition Quantity, double? Value)> TrueValues { get; }

    /// <summary>How many heatings there are readings for.</summary>
    public int Heatings => Readings.Max(r => r.Weighing.Occurrence);

    /// <summary>After which heating the sensible thing is to stop; the last where it never is.</summary>
    public int SensibleHeatings => Decisions.FirstOrDefault(d => d.Stops)?.Heating ?? Heatings;
}
