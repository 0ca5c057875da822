namespace Calx.Measurement.Uncertainty;

/// <summary>One line of an uncertainty budget (JCGM 100:2008, 5.1.3 and table H.1).</summary>
/// <param name="Input">The input quantity.</param>
/// <param name="Sensitivity">Derivative of the result by the input, c.</param>
/// <param name="Contribution">|c| u, in the unit of the result.</param>
/// <param name="Share">The part of the result's variance that stands with this input. Shares sum to 1; where inputs
/// are correlated, the covariance of a pair is split evenly between the two, so that a share can be negative. 0 where
/// the result has no uncertainty.</param>
public readonly record struct BudgetEntry(UncertainInput Input, double Sensitivity, double Contribution, double Share);
