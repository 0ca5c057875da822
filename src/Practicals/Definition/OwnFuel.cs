namespace Calx.Practicals.Definition;

/// <summary>The liquid that a burner of the kit burns, and whether the burner comes to the class filled and closed.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="IsFilledByTechnician">Whether a technician fills it before the lesson, so that no bottle stands in the room.</param>
public sealed record OwnFuel(string Material, bool IsFilledByTechnician);
