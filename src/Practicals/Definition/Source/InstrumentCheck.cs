using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Checks what readings of other quantities than mass need of the rest of the file.</summary>
internal sealed class InstrumentCheck(FaultList faults)
{
    public void Run(Practical practical)
    {
        foreach (ReadingDefinition reading in practical.Readings.Where(r => !r.IsWeighing))
        {
            CheckUnit(practical, reading);
            CheckSame(practical, reading);
        }

        CheckDifference(practical);
        foreach (FaultDefinition fault in practical.Faults)
        {
            CheckFault(practical, fault);
        }
    }

    private void CheckUnit(Practical practical, ReadingDefinition reading)
    {
        Gauge gauge = practical.Gauges.First(g => g.Id == reading.Gauge);
        if (gauge.Unit != reading.Unit)
        {
            faults.Add(reading.At, $"'{reading.Id}' is read in {reading.Unit}, but the gauge '{gauge.Id}' is in {gauge.Unit} (line {gauge.At.Line}); give both the same unit");
        }
    }

    /// <summary>Readings of one gauge are taken with one instrument, whose tolerance they share.</summary>
    private void CheckSame(Practical practical, ReadingDefinition reading)
    {
        ReadingDefinition first = practical.Readings.First(r => r.Gauge == reading.Gauge);
        bool same = first.Errors!.Tolerance.Equals(reading.Errors!.Tolerance) && first.Errors.ScaleTolerance.Equals(reading.Errors.ScaleTolerance);
        if (!same)
        {
            faults.Add(reading.At, $"'{reading.Id}' and '{first.Id}' (line {first.At.Line}) show the same gauge, so one instrument takes both: give them the same 'tolerance' and 'scaleTolerance', or a gauge each");
        }
    }

    /// <summary>A fault of so many grams in one weighing moves the key difference by as much whatever the other weighings are.</summary>
    private void CheckDifference(Practical practical)
    {
        if (practical.Findings.AsExpected is not AsExpectedDefinition { Difference: Expression difference } rule)
        {
            return;
        }

        HashSet<string> weighed = [.. practical.Readings.Where(r => r.IsWeighing).Select(r => r.Id)];
        if (difference.Names.Where(weighed.Contains).Any(name => difference.Derivative(name).Simplified().Names.Any(weighed.Contains)))
        {
            faults.Add(rule.At, "in the key difference the effect of one weighing depends on another; expected a sum of weighings, whose factors may be other readings, such as after - before - 0.5 * current * time");
        }
    }

    private void CheckFault(Practical practical, FaultDefinition fault)
    {
        string? reading = fault.Effect switch
        {
            FaultEffect.Warm warm => warm.Reading,
            FaultEffect.Gain gain => gain.Reading,
            FaultEffect.Zero zero => zero.Reading,
            _ => null,
        };
        if (reading is not null && !practical.Reading(reading).IsWeighing)
        {
            faults.Add(fault.At, $"'{fault.Cause}' befalls a weighing, and '{reading}' is none; let the fault 'set' a parameter of what the gauge takes");
        }
    }
}
