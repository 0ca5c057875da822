namespace Calx.Practicals.Definition;

/// <summary>What is written on paper for students and for the technician.</summary>
internal sealed record Handouts(SheetDefinition Sheet, TechnicianDefinition Technician, IReadOnlyList<EmergencyAction> Emergencies);
