using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Simulation;

/// <summary>What a weighing is called on the sheet.</summary>
public static class WeighingLabel
{
    /// <summary>The practical's own label; the second time its label for repeats, from the third on with a number behind
    /// it.</summary>
    public static string Of(Practical practical, Weighing weighing)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ReadingDefinition reading = practical.Reading(weighing.Reading);
        if (weighing.Occurrence == 1)
        {
            return reading.Label;
        }

        int number = reading.RepeatLabel is null ? weighing.Occurrence : weighing.Occurrence - 1;
        string label = reading.RepeatLabel ?? reading.Label;
        return number == 1 ? label : string.Create(CultureInfo.InvariantCulture, $"{label} {number}");
    }

    /// <summary>The heading of its column: the label and the unit.</summary>
    public static string Heading(Practical practical, Weighing weighing) =>
        $"{Of(practical, weighing)} / {practical.Reading(weighing.Reading).Unit}";
}
