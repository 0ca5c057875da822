using System.Globalization;
using Calx.Papers.Plans;

namespace Calx.Papers.Week;

/// <summary>Something that is put out on one day, or used up in a week.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Amount">How much with spares: of what is measured out, for all lessons together; of pieces, the most at one time, since what comes back
/// serves the next lesson.</param>
/// <param name="Unit">Its unit, or null for pieces.</param>
/// <param name="Lessons">For which lessons, by their names.</param>
/// <param name="LengthInMetres">Length of what is cut from a coil, or null where nothing is cut or no metre of the stock was weighed.</param>
public sealed record WeekItem(string Label, double Amount, string? Unit, IReadOnlyList<string> Lessons, double? LengthInMetres = null)
{
    /// <summary>The amount with its unit, what is measured out rounded up.</summary>
    public string Written => KitAmount.Of(Amount) + (Unit is null ? "" : $"\u00a0{Unit}")
        + (LengthInMetres is double metres ? string.Create(CultureInfo.InvariantCulture, $" ({metres:0.0#}\u00a0m)") : "");
}
