namespace Calx.Practicals.Definition;

/// <summary>One point of a cooling curve.</summary>
/// <param name="Minutes">Since the flame was put out, 0 or more.</param>
/// <param name="ExcessInKelvin">Over the room, above 0.</param>
public readonly record struct CoolingPoint(double Minutes, double ExcessInKelvin);
