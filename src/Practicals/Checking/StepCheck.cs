using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>Every weighing has its minutes in the lesson: groups queue for the balance. What a clock or thermometer shows is read while
/// something else is done.</summary>
internal static class StepCheck
{
    public static IEnumerable<CheckFinding> Of(Practical practical) =>
        from reading in practical.Readings
        where reading.Gauge is null && !practical.Steps.Any(s => s.Reading == reading.Id)
        select CheckFinding.At(
            reading.At,
            $"no step of the lesson takes the reading '{reading.Id}', so a plan has no minutes for it",
            $"give a step the key 'reading: {reading.Id}'");
}
