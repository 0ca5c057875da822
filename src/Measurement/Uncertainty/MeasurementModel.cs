using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;

namespace Calx.Measurement.Uncertainty;

/// <summary>A measurement model Y = f(X1, ..., XN) with what is known of its inputs (JCGM 100:2008, 4.1).</summary>
public sealed class MeasurementModel
{
    private readonly double[,] correlation;

    /// <summary>Puts a model together. For a model that a person wrote, ask <see cref="FaultOf"/> first.</summary>
    /// <param name="resultName">What the result is called.</param>
    /// <param name="model">The formula; each of its names is an input.</param>
    /// <param name="inputs">The inputs, each name once; one that the formula does not use contributes nothing.</param>
    /// <param name="correlations">Correlations of pairs of inputs; pairs not named have 0.</param>
    /// <param name="molarMass">Molar mass for each formula text of the model, in g/mol, taken as exact; null where the
    /// model asks for none.</param>
    /// <exception cref="ArgumentException">The parts do not fit; the message names the fault.</exception>
    public MeasurementModel(
        string resultName,
        Expression model,
        IReadOnlyList<ModelInput> inputs,
        IReadOnlyList<InputCorrelation> correlations,
        Func<string, double>? molarMass = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(resultName);
        if (FaultOf(model, inputs, correlations, molarMass is not null) is { } fault)
        {
            throw new ArgumentException(fault.ToString());
        }

        ResultName = resultName;
        Model = model;
        Inputs = [.. inputs];
        Correlations = [.. correlations];
        MolarMass = molarMass;
        correlation = MatrixOf(Inputs, Correlations);
    }

    /// <summary>What the result is called.</summary>
    public string ResultName { get; }

    /// <summary>The formula.</summary>
    public Expression Model { get; }

    /// <summary>The inputs, in the order given.</summary>
    public IReadOnlyList<ModelInput> Inputs { get; }

    /// <summary>The correlations stated.</summary>
    public IReadOnlyList<InputCorrelation> Correlations { get; }

    /// <summary>Molar mass for each formula text of the model, in g/mol; null where the model asks for none.</summary>
    public Func<string, double>? MolarMass { get; }

    /// <summary>The first thing that keeps these parts from being a model, or null. Its span points into the formula
    /// where the formula is to blame, and is empty elsewhere.</summary>
    /// <param name="model">The formula.</param>
    /// <param name="inputs">The inputs.</param>
    /// <param name="correlations">The correlations stated.</param>
    /// <param name="hasMolarMasses">Whether molar masses can be supplied.</param>
    public static TextFault? FaultOf(
        Expression model,
        IReadOnlyList<ModelInput> inputs,
        IReadOnlyList<InputCorrelation> correlations,
        bool hasMolarMasses = true)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(correlations);
        string[] names = [.. inputs.Select(input => input.Name)];
        string? fault = ModelFaults.OfNames(names) ?? ModelFaults.OfPairs(names, correlations);
        return fault is not null
            ? new TextFault(default, fault)
            : ModelFaults.OfFormula(model, names, hasMolarMasses)
                ?? ModelFaults.OfMatrix(MatrixOf(inputs, correlations), names);
    }

    /// <summary>Correlation coefficients of the inputs, row and column in their order; a copy.</summary>
    public double[,] CorrelationMatrix() => (double[,])correlation.Clone();

    private static double[,] MatrixOf(IReadOnlyList<ModelInput> inputs, IReadOnlyList<InputCorrelation> correlations)
    {
        var places = inputs.Select((input, place) => (input.Name, place)).ToDictionary(pair => pair.Name, pair => pair.place);
        var matrix = new double[inputs.Count, inputs.Count];
        for (int i = 0; i < inputs.Count; i++)
        {
            matrix[i, i] = 1;
        }

        foreach (InputCorrelation pair in correlations)
        {
            matrix[places[pair.A], places[pair.B]] = pair.R;
            matrix[places[pair.B], places[pair.A]] = pair.R;
        }

        return matrix;
    }
}
