namespace Calx.Practicals.Definition;

/// <summary>One law of a mixture.</summary>
/// <param name="Share">Share of the groups that follow it, above 0 up to 1.</param>
/// <param name="Law">The law they follow.</param>
public sealed record MixtureComponent(double Share, ParameterLaw Law);
