namespace Calx.Practicals.Definition;

/// <summary>What happens, differs from group to group and can go wrong.</summary>
internal sealed record Course(
    IReadOnlyList<Parameter> Parameters,
    IReadOnlyList<Arm> Arms,
    IReadOnlyList<ProcedureEvent> Procedure,
    IReadOnlyList<FaultDefinition> Faults,
    IReadOnlyList<Observation> Observations,
    IReadOnlyList<ActionDefinition> Actions,
    IReadOnlyList<ConditionDefinition> Conditions,
    CoolingDefinition? Cooling);
