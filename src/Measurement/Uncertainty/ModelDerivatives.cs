using Calx.Measurement.Expressions;

namespace Calx.Measurement.Uncertainty;

/// <summary>Derivatives of a measurement model at the estimates of its inputs, up to the third.</summary>
internal sealed class ModelDerivatives
{
    private readonly MeasurementModel model;
    private readonly string[] names;
    private readonly Expression[] first;
    private readonly Expression[,] second;

    public ModelDerivatives(MeasurementModel model)
    {
        this.model = model;
        HashSet<string> used = [.. model.Model.Names];
        InputPlaces = [.. Enumerable.Range(0, model.Inputs.Count).Where(i => used.Contains(model.Inputs[i].Name))];
        names = [.. InputPlaces.Select(place => model.Inputs[place].Name)];
        first = [.. names.Select(model.Model.Derivative)];
        second = new Expression[names.Length, names.Length];
        for (int i = 0; i < names.Length; i++)
        {
            for (int j = i; j < names.Length; j++)
            {
                second[i, j] = first[i].Derivative(names[j]);
                second[j, i] = second[i, j];
            }
        }
    }

    /// <summary>Which of the model's inputs stand in its formula, by place; all derivatives are in this order.</summary>
    public int[] InputPlaces { get; }

    public double[] Gradient()
    {
        double[] values = new double[names.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = ValueOf(first[i], names[i]);
        }

        return values;
    }

    public double[,] Curvature()
    {
        var values = new double[names.Length, names.Length];
        for (int i = 0; i < names.Length; i++)
        {
            for (int j = 0; j < names.Length; j++)
            {
                values[i, j] = i <= j ? ValueOf(second[i, j], names[i], names[j]) : values[j, i];
            }
        }

        return values;
    }

    public double Third(int i, int j, int k)
        => ValueOf(second[i, j].Derivative(names[k]), names[i], names[j], names[k]);

    private double ValueOf(Expression derivative, params ReadOnlySpan<string> by)
    {
        try
        {
            return derivative.Evaluate(Estimate, formula => model.MolarMass!(formula));
        }
        catch (UndefinedResultException fault)
        {
            throw CheckedMath.Fault(
                "second-order propagation",
                $"the model's derivative by {string.Join(", ", by!)} has no value at the estimates of its inputs: {fault.Message}");
        }
    }

    private double Estimate(string name)
    {
        foreach (int place in InputPlaces)
        {
            if (model.Inputs[place].Name == name)
            {
                return model.Inputs[place].Distribution.Mean;
            }
        }

        throw new ArgumentException($"There is no input {name}.", nameof(name));
    }
}
