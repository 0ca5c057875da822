using System.Globalization;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Model.Simulation;

/// <summary>An invented group with all that is true of it.</summary>
public sealed class SimulatedGroup
{
    private readonly IReadOnlyList<double> partMasses;
    private readonly Practical practical;

    internal SimulatedGroup(
        int number,
        Practical practical,
        SimulatedTruth truth,
        IReadOnlyList<double> partMasses,
        IReadOnlyList<SimulatedReading> readings,
        IReadOnlyList<string> observations,
        (GroupSeries Written, GroupSeries Displayed)? series = null,
        Arm? arm = null)
    {
        this.practical = practical;
        this.partMasses = partMasses;
        Number = number;
        Truth = truth;
        Readings = readings;
        Observations = observations;
        Series = series?.Written;
        DisplayedPoints = series?.Displayed.Points ?? [];
        Arm = arm;
    }

    /// <summary>From 1.</summary>
    public int Number { get; }

    /// <summary><c>G1</c>, <c>G2</c> ...</summary>
    public string Name => string.Create(CultureInfo.InvariantCulture, $"G{Number}");

    /// <summary>What went wrong, and what counts.</summary>
    public SimulatedTruth Truth { get; }

    /// <summary>The arm that it does, or null for the ordinary way.</summary>
    public Arm? Arm { get; }

    /// <summary>The weighings in order.</summary>
    public IReadOnlyList<SimulatedReading> Readings { get; }

    /// <summary>Ids of what was noted.</summary>
    public IReadOnlyList<string> Observations { get; }

    /// <summary>Mass against time as written, or null where the practical takes none.</summary>
    public GroupSeries? Series { get; }

    /// <summary>What the balance showed at the points between the first and the last; none where the practical takes no series.</summary>
    public IReadOnlyList<SeriesPoint> DisplayedPoints { get; }

    /// <summary>Mass in g of a part, by its place in the practical's list.</summary>
    public double PartMassInGrams(int part) => partMasses[part];

    /// <summary>Masses in g of all parts that belong on the pan at a reading.</summary>
    public double PartsOnPanInGrams(string readingId)
    {
        double sum = 0;
        for (int part = 0; part < partMasses.Count; part++)
        {
            sum += practical.Reading(readingId).Pan.Parts.Contains(practical.Parts[part].Id) ? partMasses[part] : 0;
        }

        return sum;
    }

    /// <summary>What the group hands in.</summary>
    public GroupReadings HandedIn() => new(
        Name,
        trial: null,
        [.. Readings.Select(r => new TakenReading(r.Weighing.Reading, r.Weighing.Occurrence, r.Written))],
        remarks: new GroupRemarks(arm: Arm?.Label, observations: Observations),
        series: Series);
}
