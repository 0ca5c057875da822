using System.Globalization;

namespace Calx.Chemistry.Amounts;

/// <summary>Whether a mass can be the mass of a part of a compound.</summary>
internal static class PartMass
{
    /// <summary>Why it cannot, or null where it can.</summary>
    public static string? Fault(WeighedPart part) => part.MassInGrams.Value switch
    {
        > 0 => null,
        0 => $"no mass of {part.Symbol} was found, so no formula with {part.Symbol} follows",
        double mass => string.Create(
            CultureInfo.InvariantCulture, $"the mass of {part.Symbol} comes out negative ({mass:0.####} g); check the readings it is found from"),
    };
}
