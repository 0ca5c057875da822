namespace Calx.Measurement.Uncertainty;

/// <summary>Effective degrees of freedom (JCGM 100:2008, G.4.1, equation G.2b).</summary>
internal static class WelchSatterthwaite
{
    // Nine degrees of freedom may come out as 8.9999999999 and must not be truncated to eight.
    private const double RoundingSlack = 1e-9;

    public static double EffectiveDegreesOfFreedom(UncertainValue value)
    {
        double variance = UncertainValue.Covariance(value, value);
        if (!(variance > 0))
        {
            return double.PositiveInfinity;
        }

        double sum = 0;
        foreach (Component component in Components(value))
        {
            // Shares of the variance, so that no fourth power can leave the range of a double.
            double share = component.Variance / variance;
            sum += share * share / component.DegreesOfFreedom;
        }

        return 1 / sum;
    }

    public static double Truncated(double degreesOfFreedom)
        => degreesOfFreedom < 1 ? degreesOfFreedom : Math.Floor(degreesOfFreedom * (1 + RoundingSlack));

    private static List<Component> Components(UncertainValue value)
    {
        var lookup = new SensitivityLookup(value.Terms);
        var components = new List<Component>(value.Terms.Length);
        var joint = new Dictionary<UncertainInput, int>();
        foreach (SensitivityTerm term in value.Terms)
        {
            var own = new Component(lookup.PartOfCovariance(term, value.Groups), DegreesOf(term));
            UncertainInput leader = Leader(term.Input, value.Groups);
            if (joint.TryGetValue(leader, out int place))
            {
                components[place] = components[place].With(own);
            }
            else
            {
                joint.Add(leader, components.Count);
                components.Add(own);
            }
        }

        return components;
    }

    private static double DegreesOf(SensitivityTerm term)
        => term.Sensitivity == 0 || term.Input.StandardUncertainty == 0
            ? double.PositiveInfinity
            : term.Input.DegreesOfFreedom;

    private static UncertainInput Leader(UncertainInput input, CorrelationGroup[] groups)
        => Array.Find(groups, group => group.Holds(input))?.LeaderOf(input) ?? input;

    private readonly record struct Component(double Variance, double DegreesOfFreedom)
    {
        public Component With(Component other)
            => new(Variance + other.Variance, Math.Min(DegreesOfFreedom, other.DegreesOfFreedom));
    }
}
