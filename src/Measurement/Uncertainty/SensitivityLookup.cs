namespace Calx.Measurement.Uncertainty;

/// <summary>The derivatives of one value, found by input.</summary>
internal readonly struct SensitivityLookup
{
    // Up to here a look through the list is quicker than a dictionary.
    private const int SearchedInLine = 16;

    private readonly SensitivityTerm[] terms;
    private readonly Dictionary<UncertainInput, double>? byInput;

    public SensitivityLookup(SensitivityTerm[] terms)
    {
        this.terms = terms;
        byInput = terms.Length > SearchedInLine
            ? terms.ToDictionary(term => term.Input, term => term.Sensitivity)
            : null;
    }

    /// <summary>Derivative by an input; 0 where the value does not depend on it.</summary>
    public double Of(UncertainInput input)
    {
        if (byInput is not null)
        {
            return byInput.GetValueOrDefault(input);
        }

        foreach (SensitivityTerm term in terms)
        {
            if (ReferenceEquals(term.Input, input))
            {
                return term.Sensitivity;
            }
        }

        return 0;
    }

    /// <summary>What a term of another value adds to the covariance with this one: c u times the sum of r c u.</summary>
    public double PartOfCovariance(SensitivityTerm other, CorrelationGroup[] groups)
    {
        double spread = other.Sensitivity * other.Input.StandardUncertainty;
        if (Array.Find(groups, group => group.Holds(other.Input)) is not { } correlated)
        {
            return spread * (Of(other.Input) * other.Input.StandardUncertainty);
        }

        int row = correlated.PositionOf(other.Input);
        double sum = 0;
        for (int column = 0; column < correlated.Inputs.Length; column++)
        {
            UncertainInput input = correlated.Inputs[column];
            sum += correlated.Between(row, column) * Of(input) * input.StandardUncertainty;
        }

        return spread * sum;
    }
}
