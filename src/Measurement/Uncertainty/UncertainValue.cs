namespace Calx.Measurement.Uncertainty;

/// <summary>
/// A value that remembers how it depends on independent (or expressly correlated) inputs: its derivative by each of
/// them. So correlation through shared inputs comes by itself (x - x is 0 ± 0) and the budget is free. Uncertainty is
/// propagated to first order (JCGM 100:2008, 5.1.2 and 5.2.2). There is no <c>==</c>: ask
/// <see cref="IsConsistentWith"/>.
/// </summary>
public sealed partial class UncertainValue
{
    private UncertainValue(double value, SensitivityTerm[] terms, CorrelationGroup[] groups)
    {
        Value = value;
        Terms = terms;
        Groups = groups;
    }

    /// <summary>The estimate, in the quantity's own unit.</summary>
    public double Value { get; }

    /// <summary>Whether the value rests on no input at all, so that its uncertainty is 0 by definition.</summary>
    public bool IsExact => Terms.Length == 0;

    /// <summary>The inputs it depends on, in order of first appearance.</summary>
    public IEnumerable<UncertainInput> Inputs => Terms.Select(term => term.Input);

    internal SensitivityTerm[] Terms { get; }

    internal CorrelationGroup[] Groups { get; }

    /// <summary>A number without uncertainty: a count, a definition, a stoichiometric coefficient.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static UncertainValue Exact(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A value is a finite number.");
        }

        return new UncertainValue(value, [], []);
    }

    /// <summary>A new input of its own, independent of all others.</summary>
    /// <param name="name">What a budget calls it.</param>
    /// <param name="value">The estimate, in the quantity's own unit.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, in the same unit, at least 0.</param>
    /// <param name="degreesOfFreedom">Above 0; +∞ where the uncertainty is taken as exact.</param>
    /// <exception cref="ArgumentException">As <see cref="UncertainInput"/>.</exception>
    public static UncertainValue Of(
        string name, double value, double standardUncertainty, double degreesOfFreedom = double.PositiveInfinity)
        => Of(new UncertainInput(name, value, standardUncertainty, degreesOfFreedom));

    /// <summary>The value of an input. Every value made from the same input shares its error.</summary>
    public static UncertainValue Of(UncertainInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return new UncertainValue(input.Value, [new SensitivityTerm(input, 1)], []);
    }

    /// <summary>The values of inputs that are correlated with each other (JCGM 100:2008, 5.2).</summary>
    /// <param name="inputs">The inputs, each once.</param>
    /// <param name="correlation">Their correlation coefficients, row and column in the order of
    /// <paramref name="inputs"/>: symmetric, 1 on the diagonal, no coefficient beyond ±1, positive semidefinite.</param>
    /// <exception cref="ArgumentException">An input stands twice or the matrix is none of correlations; the message
    /// names the fault.</exception>
    public static IReadOnlyList<UncertainValue> Correlated(
        IReadOnlyList<UncertainInput> inputs, double[,] correlation)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(correlation);
        CorrelationGroup[] groups = [new CorrelationGroup(inputs, correlation)];
        return [.. inputs.Select(input => new UncertainValue(input.Value, [new SensitivityTerm(input, 1)], groups))];
    }

    /// <summary>Any differentiable function of uncertain values, by the chain rule.</summary>
    /// <param name="value">The function's value.</param>
    /// <param name="parts">Its arguments.</param>
    /// <param name="derivatives">Its partial derivative by each argument, at their estimates.</param>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    /// <exception cref="UndefinedResultException">The value or a derivative is not finite.</exception>
    /// <exception cref="InvalidOperationException">The parts rest on two overlapping sets of correlated inputs.</exception>
    public static UncertainValue Combine(
        double value, ReadOnlySpan<UncertainValue> parts, ReadOnlySpan<double> derivatives)
    {
        if (parts.Length != derivatives.Length)
        {
            throw new ArgumentException(
                $"There are {derivatives.Length} derivatives for {parts.Length} values.", nameof(derivatives));
        }

        return new UncertainValue(
            CheckedMath.Finite("combination", value),
            SensitivityList.Combine(parts, derivatives),
            SensitivityList.Groups(parts));
    }

    /// <summary>The sum of all values; 0 for none. Takes time in proportion to the inputs, where a loop of
    /// <c>+</c> copies what it has so far at each step.</summary>
    public static UncertainValue Sum(IEnumerable<UncertainValue> values)
    {
        UncertainValue[] parts = [.. values];
        double[] ones = new double[parts.Length];
        Array.Fill(ones, 1.0);
        return LinearCombination(parts, ones);
    }

    /// <summary>The sum of each value times its weight.</summary>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    public static UncertainValue LinearCombination(
        ReadOnlySpan<UncertainValue> values, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (int i = 0; i < Math.Min(values.Length, weights.Length); i++)
        {
            sum += weights[i] * values[i].Value;
        }

        return Combine(sum, values, weights);
    }

    /// <summary>The estimate and its standard uncertainty, for a log or a debugger: <c>5.03 ± 0.02</c>.</summary>
    public override string ToString() => $"{CheckedMath.Show(Value)} ± {CheckedMath.Show(StandardUncertainty)}";
}
