namespace Calx.Measurement.Uncertainty;

/// <summary>The law of propagation of uncertainty with first-order terms (JCGM 100:2008, 5.1.2 and 5.2.2).</summary>
public static class FirstOrder
{
    /// <summary>The model's value at the estimates of its inputs, with its budget.</summary>
    /// <exception cref="UndefinedResultException">The model has no value there, or stands at a corner of abs, min or
    /// max, where it has no derivative.</exception>
    public static UncertainValue Propagate(MeasurementModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        UncertainInput[] inputs = [.. model.Inputs.Select(input => input.ToUncertainInput())];
        IReadOnlyList<UncertainValue> values = model.Correlations.Count == 0
            ? [.. inputs.Select(UncertainValue.Of)]
            : UncertainValue.Correlated(inputs, model.CorrelationMatrix());
        var byName = new Dictionary<string, UncertainValue>();
        for (int i = 0; i < inputs.Length; i++)
        {
            byName.Add(inputs[i].Name, values[i]);
        }

        // A model checks on construction that it has molar masses where it asks for them.
        return model.Model.Evaluate(
            name => byName[name], formula => UncertainValue.Exact(model.MolarMass!(formula)));
    }
}
