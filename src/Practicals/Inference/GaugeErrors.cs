using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference;

/// <summary>How far readings of other quantities than mass may be off together: what an instrument is out by is the same for all
/// that a group reads on it, and cancels in a difference unless its scale is too wide or too narrow.</summary>
internal sealed class GaugeErrors
{
    private readonly (string Gauge, InstrumentErrors Errors, int[] At)[] instruments;

    /// <summary>Finds which readings share an instrument.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="readings">Ids of its readings, in the order in which they are asked for later; a number behind them, and columns, do no harm.</param>
    public GaugeErrors(Practical practical, IReadOnlyList<string> readings)
    {
        ReadingDefinition?[] known = [.. readings.Select(id => practical.Readings.FirstOrDefault(r => TakenReading.IsOf(r.Id, id)))];
        instruments =
        [
            .. known.OfType<ReadingDefinition>().Where(r => !r.IsWeighing).GroupBy(r => r.Gauge!, StringComparer.Ordinal)
                .Select(g => (g.Key, g.First().Errors!, Enumerable.Range(0, known.Length).Where(i => known[i]?.Gauge == g.Key).ToArray())),
        ];
    }

    /// <summary>Whether all are weighings.</summary>
    public bool IsEmpty => instruments.Length == 0;

    /// <summary>What the instruments are out by, each as how far it moves the readings when it is out by one standard uncertainty:
    /// both half widths are rectangular (JCGM 100:2008, 4.3.7).</summary>
    /// <param name="values">The readings.</param>
    public IEnumerable<SharedError> Shared(IReadOnlyList<double> values)
    {
        foreach ((string gauge, InstrumentErrors errors, int[] at) in instruments)
        {
            if (errors.Tolerance > 0)
            {
                yield return Error(ReadingContribution.InstrumentOf(gauge), errors.Tolerance, i => at.Contains(i) ? 1 : 0);
            }

            if (errors.ScaleTolerance > 0)
            {
                yield return Error(ReadingContribution.ScaleOf(gauge), errors.ScaleTolerance, i => at.Contains(i) ? values[i] : 0);
            }
        }

        SharedError Error(string source, double halfWidth, Func<int, double> factor) =>
            new(source, halfWidth / Math.Sqrt(3), [.. Enumerable.Range(0, values.Count).Select(factor)]);
    }
}

/// <summary>One thing that several readings are out by together.</summary>
/// <param name="Source">Its id among the sources of uncertainty.</param>
/// <param name="StandardUncertainty">How much it is, in its own unit.</param>
/// <param name="Factors">By how much each reading moves with it.</param>
internal sealed record SharedError(string Source, double StandardUncertainty, double[] Factors);
