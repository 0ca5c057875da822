using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>A curve given as a formula; its derivatives are the exact ones, by the rules of calculus.</summary>
public sealed class FormulaModel : INonlinearModel
{
    private readonly DrawProgram value;
    private readonly DrawProgram[] derivatives;
    private readonly double[][] places;

    /// <summary>Takes a formula over parameters and places.</summary>
    /// <param name="formula">The formula, without molar masses.</param>
    /// <param name="parameters">The names to be found, in the order wanted.</param>
    /// <param name="places">For each other name of the formula its value at each point, all equally many.</param>
    /// <exception cref="ArgumentException">No parameter, a name twice or unknown, or columns of different lengths.</exception>
    public FormulaModel(
        Expression formula, IReadOnlyList<string> parameters, IReadOnlyDictionary<string, double[]> places)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentNullException.ThrowIfNull(places);
        string[] names = [.. parameters, .. places.Keys];
        if (parameters.Count == 0 || places.Count == 0 || names.Distinct().Count() < names.Length)
        {
            throw new ArgumentException("At least one parameter and one place are needed, and each name once.", nameof(parameters));
        }

        Parameters = [.. parameters];
        this.places = [.. places.Values];
        Points = this.places[0].Length;
        foreach (double[] place in this.places)
        {
            Require.Finite(place, 1, nameof(places));
            Require.SameLength(place, Points, nameof(places));
        }

        value = DrawProgram.Compile(formula, names);
        derivatives = [.. Parameters.Select(name => DrawProgram.Compile(formula.Derivative(name), names))];
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Parameters { get; }

    /// <inheritdoc/>
    public int Points { get; }

    /// <inheritdoc/>
    public bool TryEvaluate(ReadOnlySpan<double> parameters, Span<double> values, Span<double> derivatives)
    {
        var columns = new double[Parameters.Count + places.Length][];
        for (int k = 0; k < Parameters.Count; k++)
        {
            columns[k] = new double[Points];
            Array.Fill(columns[k], parameters[k]);
        }

        places.CopyTo(columns, Parameters.Count);
        try
        {
            value.Evaluate(columns, Points, values);
            for (int k = 0; k < Parameters.Count && derivatives.Length > 0; k++)
            {
                this.derivatives[k].Evaluate(columns, Points, derivatives.Slice(k * Points, Points));
            }

            return true;
        }
        catch (UndefinedResultException)
        {
            return false;
        }
    }
}
