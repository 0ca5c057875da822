namespace Calx.Measurement.Uncertainty;

/// <summary>Derivative of a value by one input.</summary>
internal readonly record struct SensitivityTerm(UncertainInput Input, double Sensitivity);
