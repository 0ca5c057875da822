using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>Every reading has its minutes in the lesson.</summary>
internal static class StepCheck
{
    public static IEnumerable<CheckFinding> Of(Practical practical) =>
        from reading in practical.Readings
        where !practical.Steps.Any(s => s.Reading == reading.Id)
        select CheckFinding.At(
            reading.At,
            $"no step of the lesson takes the reading '{reading.Id}', so a plan has no minutes for it",
            $"give a step the key 'reading: {reading.Id}'");
}
