namespace Calx.Measurement.Uncertainty;

/// <summary>Linear combinations of sensitivity lists: the chain rule. Inputs stay in order of first appearance.</summary>
internal static class SensitivityList
{
    // Up to here a look through the list is quicker than a dictionary.
    private const int SearchedInLine = 16;

    public static SensitivityTerm[] Combine(ReadOnlySpan<UncertainValue> parts, ReadOnlySpan<double> weights)
    {
        int most = 0;
        foreach (UncertainValue part in parts)
        {
            most += part.Terms.Length;
        }

        var sum = new List<SensitivityTerm>(most);
        Dictionary<UncertainInput, int>? places = most > SearchedInLine ? new(most) : null;
        for (int i = 0; i < parts.Length; i++)
        {
            foreach (SensitivityTerm term in parts[i].Terms)
            {
                Add(sum, places, term.Input, CheckedMath.Multiply(weights[i], term.Sensitivity));
            }
        }

        return [.. sum];
    }

    private static void Add(
        List<SensitivityTerm> sum, Dictionary<UncertainInput, int>? places, UncertainInput input, double sensitivity)
    {
        int place = PlaceOf(sum, places, input);
        if (place < 0)
        {
            places?.Add(input, sum.Count);
            sum.Add(new SensitivityTerm(input, sensitivity));
        }
        else
        {
            sum[place] = new SensitivityTerm(input, CheckedMath.Add(sum[place].Sensitivity, sensitivity));
        }
    }

    private static int PlaceOf(
        List<SensitivityTerm> sum, Dictionary<UncertainInput, int>? places, UncertainInput input)
        => places is null
            ? sum.FindIndex(term => ReferenceEquals(term.Input, input))
            : places.GetValueOrDefault(input, -1);

    /// <summary>All groups of the parts, each once.</summary>
    /// <exception cref="InvalidOperationException">An input stands in two different groups: its correlations would be
    /// given twice.</exception>
    public static CorrelationGroup[] Groups(ReadOnlySpan<UncertainValue> parts)
    {
        List<CorrelationGroup>? all = null;
        foreach (UncertainValue part in parts)
        {
            foreach (CorrelationGroup group in part.Groups)
            {
                all ??= [];
                if (!all.Contains(group))
                {
                    RefuseOverlap(all, group);
                    all.Add(group);
                }
            }
        }

        return all is null ? [] : [.. all];
    }

    private static void RefuseOverlap(List<CorrelationGroup> groups, CorrelationGroup added)
    {
        foreach (CorrelationGroup group in groups)
        {
            if (added.Inputs.FirstOrDefault(group.Holds) is { } shared)
            {
                throw new InvalidOperationException(
                    $"The input {shared.Name} stands in two sets of correlated inputs; give all its correlations in one.");
            }
        }
    }
}
