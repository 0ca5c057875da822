using Calx.Practicals.Model;

namespace Calx.Practicals.Watching;

/// <summary>The reading that a group takes next.</summary>
/// <param name="Weighing">Which.</param>
/// <param name="Label">What it is called on the sheet: 'Mass after reheating'.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Decimals">How many decimals the group's balance shows; null where the reading is no weighing.</param>
public sealed record NextReading(Weighing Weighing, string Label, string Unit, int? Decimals)
{
    /// <summary>Its id: <c>after2</c>.</summary>
    public string Id => Weighing.Id;
}
