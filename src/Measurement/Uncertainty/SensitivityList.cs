namespace Calx.Measurement.Uncertainty;

/// <summary>Linear combinations of sensitivity lists: the chain rule. Inputs stay in order of first appearance.</summary>
internal static class SensitivityList
{
    // Up to so many terms to be added, a look through the list for each is quicker than a dictionary of the list.
    private const int SearchedInLine = 16;

    public static SensitivityTerm[] Combine(ReadOnlySpan<UncertainValue> parts, ReadOnlySpan<double> weights)
    {
        int most = 0;
        foreach (UncertainValue part in parts)
        {
            most += part.Terms.Length;
        }

        var sum = new SensitivityTerm[most];
        int count = parts.Length == 0 ? 0 : CopyScaled(parts[0].Terms, weights[0], sum);
        Dictionary<UncertainInput, int>? places = most - count > SearchedInLine ? PlacesOf(sum.AsSpan(0, count), most) : null;
        for (int i = 1; i < parts.Length; i++)
        {
            foreach (SensitivityTerm term in parts[i].Terms)
            {
                double sensitivity = CheckedMath.Multiply(weights[i], term.Sensitivity);
                int place = PlaceOf(term.Input, sum.AsSpan(0, count), places);
                double before = place < count ? sum[place].Sensitivity : 0;
                sum[place] = new SensitivityTerm(term.Input, CheckedMath.Add(before, sensitivity));
                count = Math.Max(count, place + 1);
            }
        }

        return count == most ? sum : sum[..count];
    }

    private static int CopyScaled(SensitivityTerm[] terms, double weight, SensitivityTerm[] scaled)
    {
        terms.CopyTo(scaled);
        for (int i = 0; weight != 1 && i < terms.Length; i++)
        {
            scaled[i] = new SensitivityTerm(terms[i].Input, CheckedMath.Multiply(weight, terms[i].Sensitivity));
        }

        return terms.Length;
    }

    private static Dictionary<UncertainInput, int> PlacesOf(ReadOnlySpan<SensitivityTerm> terms, int most)
    {
        var places = new Dictionary<UncertainInput, int>(most);
        for (int i = 0; i < terms.Length; i++)
        {
            places.Add(terms[i].Input, i);
        }

        return places;
    }

    // Where the input stands, or the next free place.
    private static int PlaceOf(
        UncertainInput input, ReadOnlySpan<SensitivityTerm> sum, Dictionary<UncertainInput, int>? places)
    {
        if (places is not null)
        {
            return places.TryAdd(input, sum.Length) ? sum.Length : places[input];
        }

        int place = 0;
        while (place < sum.Length && !ReferenceEquals(sum[place].Input, input))
        {
            place++;
        }

        return place;
    }

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
