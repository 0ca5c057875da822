using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>How far an instrument is off, the same for all that a group reads on it: a shift of its scale, or a share of what it
/// shows.</summary>
/// <param name="StandardUncertainty">Before anything is read.</param>
/// <param name="Factors">By how much each weighing of the walk moves with it.</param>
internal sealed record InstrumentColumn(double StandardUncertainty, double[] Factors)
{
    /// <summary>Those of a practical.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="weighings">The readings of a walk.</param>
    /// <param name="shown">What was read at one of them, about.</param>
    public static IEnumerable<InstrumentColumn> Of(Practical practical, IReadOnlyList<Weighing> weighings, Func<int, double> shown)
    {
        foreach (string gauge in practical.Gauges.Select(g => g.Id))
        {
            int[] places = [.. Enumerable.Range(0, weighings.Count).Where(i => practical.Reading(weighings[i].Reading).Gauge == gauge)];
            InstrumentErrors? errors = places.Length == 0 ? null : practical.Reading(weighings[places[0]].Reading).Errors;
            if (errors is { Tolerance: > 0 })
            {
                yield return Column(errors.Tolerance, i => places.Contains(i) ? 1 : 0);
            }

            if (errors is { ScaleTolerance: > 0 })
            {
                yield return Column(errors.ScaleTolerance, i => places.Contains(i) ? shown(i) : 0);
            }
        }

        // A half width is rectangular: JCGM 100:2008, 4.3.7.
        InstrumentColumn Column(double halfWidth, Func<int, double> factor) =>
            new(halfWidth / Math.Sqrt(3), [.. Enumerable.Range(0, weighings.Count).Select(factor)]);
    }
}
