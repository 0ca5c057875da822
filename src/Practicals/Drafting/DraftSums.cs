namespace Calx.Practicals.Drafting;

/// <summary>The formulas over readings of a draft.</summary>
internal sealed class DraftSums
{
    private readonly DraftPlan plan;

    public DraftSums(DraftPlan plan)
    {
        this.plan = plan;
        DraftSpecies[] counted = [.. plan.Family switch
        {
            DraftFamily.Heated => plan.Equation.Products.Where(p => !p.IsGas),
            DraftFamily.Gas => plan.Equation.Products.Where(p => p.IsGas),
            _ => plan.Equation.Product is DraftSpecies product ? [product] : [],
        }];
        string sum = string.Join(" + ", counted.Select(p => p.MolesTimesMass));
        Ratio = $"({sum}) / ({plan.Equation.Sample.MolesTimesMass})";
        RatioValue = counted.Sum(p => p.Coefficient * DraftEquation.MassOf(p)) / (plan.Equation.Sample.Coefficient * DraftEquation.MassOf(plan.Equation.Sample));
        LeftWords = counted.Length == 1 ? counted[0].Name : "what is left";
        GasWords = counted.Length == 1 ? counted[0].Name : "the gases";
        Hydrate = DraftHydrate.Of(plan.Family, plan.Equation);
    }

    /// <summary>The salt with its water, or null where it is something else that happens.</summary>
    public DraftHydrate? Hydrate { get; }

    /// <summary>The key quantity's theory value.</summary>
    public double KeyValue => Hydrate?.Moles ?? RatioValue;

    /// <summary>The mass of the sample. Without a weighing of the empty vessel the vessel is in it, which a check of the file tells.</summary>
    public string Sample => plan.WeighsEmpty ? "before - empty" : "before";

    public string Left => plan.WeighsEmpty ? "after - empty" : "after";

    /// <summary>Mass of what is counted for 1 g of the sample, as a formula of molar masses.</summary>
    public string Ratio { get; }

    public double RatioValue { get; }

    public string LeftWords { get; }

    public string GasWords { get; }

    public string SampleWords => plan.Family == DraftFamily.Closed ? $"the {plan.Equation.Sample.Name} solution" : plan.Equation.Sample.Name;

    public string Key => plan.Family switch
    {
        DraftFamily.Heated => Hydrate is null ? "residueFraction" : "moleRatio",
        DraftFamily.Gas => "lossFraction",
        DraftFamily.Closed => "massChange",
        _ => "productFraction",
    };

    public string KeyLabel => plan.Family switch
    {
        _ when Hydrate is not null => $"moles of water for 1 mole of {Hydrate.Salt.Name}",
        DraftFamily.Gas => $"mass of gas for 1 g of {plan.Equation.Sample.Name}",
        _ => $"mass of {LeftWords} for 1 g of {plan.Equation.Sample.Name}",
    };

    public string KeyFormula => Hydrate is not null ? Hydrate.RatioOf(Left) : plan.Family == DraftFamily.Gas ? $"(before - after) / ({Sample})" : $"({Left}) / ({Sample})";

    public string Difference => plan.Family switch
    {
        DraftFamily.Closed => "after - before",
        DraftFamily.Gas => $"(before - after) - {Ratio} * ({Sample})",
        _ => $"({Left}) - {Ratio} * ({Sample})",
    };

    public string Expect => plan.Family switch
    {
        DraftFamily.Gas => "falls",
        DraftFamily.Closed => "same",
        DraftFamily.Product => "rises",
        _ => RatioValue > 1 ? "rises" : "falls",
    };

    public string Conclusions => plan.Family switch
    {
        _ when Hydrate is not null => $$"""
              - { id: loses, label: the mass falls, test: { falls: massChange } }
              - { id: waters, label: {{DraftText.Quoted($"{Hydrate.Number} {(Hydrate.Moles == 1 ? "mole of water goes" : "moles of water go")} with one mole of {Hydrate.Salt.Name}")}}, test: { chooses: { quantity: moleRatio, among: [{{Hydrate.Among}}] } } }
              - { id: within-five, label: it is within 5 % of what the equation says, test: { within: { quantity: moleRatio, share: 0.05 } }, optional: true }
            """,
        DraftFamily.Closed => "  - { id: stays, label: the mass stays the same, test: { stays: massChange } }",
        DraftFamily.Product => """
              - { id: made, label: a solid is made, test: { rises: productMass } }
              - { id: within-ten, label: its mass lies within 10 % of the greatest possible, test: { within: { quantity: productFraction, share: 0.1 } } }
            """,
        _ => $$"""
              - { id: moves, label: the mass {{Expect}}, test: { {{Expect}}: massChange } }
              - { id: within-five, label: it is within 5 % of what the equation says, test: { within: { quantity: {{Key}}, share: 0.05 } } }
            """,
    };
}
