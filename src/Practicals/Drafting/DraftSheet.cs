using static Calx.Practicals.Drafting.DraftText;

namespace Calx.Practicals.Drafting;

/// <summary>The student's sheet and the answers that earn marks.</summary>
internal static class DraftSheet
{
    public static void Write(DraftText text, DraftPlan plan)
    {
        var sums = new DraftSums(plan);
        string sample = plan.Equation.Sample.Name;
        text.Add("# What students read. {sample} is the plan's mass. Put your own words here, with the cautions where they are needed.\nsheet:\n  steps:", last: false);
        text.Add($"    - {{ at: [set-up], say: 'Eye protection on, hair and sleeves back.{(plan.Flame ? " Look for cracks." : "")}' }}", last: false);
        text.AddIf(plan.WeighsEmpty, $"    - {{ at: [weigh-empty], say: {Quoted($"See that the balance shows zero. {Empty(plan)} Write down every digit, and the letter on the balance; keep to that balance.")} }}");
        text.Add($"    - {{ at: [weigh-before], say: {Quoted($"{Put(plan, sample)} Weigh again.")} }}", last: false);
        text.AddIf(plan.Flame, "    - { at: [check], say: 'Let the teacher look before you light the burner.' }");
        text.Add($"    - {{ at: [act], say: {Quoted(Act(plan, sample))} }}", last: false);
        text.Add($"    - {{ at: [wait], say: {Quoted(Wait(plan))} }}", last: false);
        text.Add(plan.Family == DraftFamily.Gas
            ? "    - { at: [weigh-after], say: 'Weigh everything together, the empty boat too. Write down every digit.' }"
            : "    - { at: [weigh-after], say: 'Weigh it. Write down every digit.' }", last: false);
        text.AddIf(plan is { Family: DraftFamily.Heated, Repeats: > 1 }, "    - { at: [act-again], say: 'Heat again, let it cool and weigh, until two weighings in a row agree within two steps of the balance.' }");
        text.Add("""
              questions:
                - { id: what-happened, about: conclusion, needs: [before, after], ask: 'What do your weighings show?', expected: ['how the mass changed, with its number', 'what took part in the change'] }
                - { id: odd-one, about: evaluation, ask: 'One group differs from the others. Give a cause, and say which reading it changes and how.', expected: ['a cause that fits', 'which reading it changes, and in which direction'] }
            """, last: false);
        text.AddIf(
            sums.Hydrate is not null,
            $"    - {{ id: how-many, about: conclusion, needs: [{(plan.WeighsEmpty ? "empty, " : "")}before, after], ask: {Quoted($"How many moles of water go with one mole of {sums.Hydrate?.Salt.Name} by your readings? Say whether they leave another whole number open.")}, expected: ['the value found from the own readings', 'the nearest whole number, and those that the uncertainty leaves open'] }}");
        text.Gap();
        text.Add("# What students work out, with marks. A formula may use readings and earlier answers.\nanswers:", last: false);
        text.Add($"  - {{ id: massSample, label: {Quoted($"mass of {sums.SampleWords}")}, unit: g, formula: {sums.Sample}, marks: 1 }}", last: false);
        text.Add(plan.Family switch
        {
            _ when sums.Hydrate is not null => $$"""
                  - { id: massWater, label: mass of water driven off, unit: g, formula: before - after, marks: 1 }
                  - { id: massLeft, label: {{Quoted($"mass of {sums.LeftWords}")}}, unit: g, formula: {{sums.Left}}, marks: 1 }
                  - { id: molesWater, label: moles of water, unit: mol, formula: massWater / M(H2O), marks: 1 }
                  - { id: molesLeft, label: {{Quoted($"moles of {sums.LeftWords}")}}, unit: mol, formula: massLeft / M({{sums.Hydrate.Salt.Text}}), marks: 1 }
                  - { id: ratio, label: {{Quoted(sums.KeyLabel)}}, unit: '1', formula: molesWater / molesLeft, marks: 1 }
                """,
            DraftFamily.Heated => $$"""
                  - { id: change, label: change in mass, unit: g, formula: after - before, marks: 1 }
                  - { id: massLeft, label: {{Quoted($"mass of {sums.LeftWords}")}}, unit: g, formula: {{sums.Left}}, marks: 1 }
                  - { id: fraction, label: mass left for 1 g, unit: '1', formula: massLeft / massSample, marks: 1 }
                """,
            DraftFamily.Gas => $$"""
                  - { id: massGas, label: {{Quoted($"mass of {sums.GasWords}")}}, unit: g, formula: before - after, marks: 1 }
                  - { id: fraction, label: mass of gas for 1 g, unit: '1', formula: massGas / massSample, marks: 1 }
                """,
            DraftFamily.Closed => "  - { id: change, label: change in mass, unit: g, formula: after - before, marks: 1 }",
            _ => $$"""
                  - { id: massProduct, label: {{Quoted($"mass of {sums.LeftWords}")}}, unit: g, formula: {{sums.Left}}, marks: 1 }
                  - { id: percent, label: percentage yield, unit: '%', formula: 100 * massProduct / ({{sums.Ratio}} * massSample), marks: 2 }
                """,
        });
    }

    private static string Empty(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Gas => $"Pour about {DraftWords.Plain(plan.Solution)} g of the solution into the {plan.Vessel}. Weigh it and the empty boat together.",
        DraftFamily.Closed => $"Weigh the {plan.Vessel} together, the second solution in the flask and the tube still empty.",
        _ => $"Weigh the empty {plan.Vessel}.",
    };

    private static string Put(DraftPlan plan, string sample) => plan.Family switch
    {
        DraftFamily.Gas => $"Put {{sample}} of {sample} into the boat, with the {plan.Vessel} on the balance too.",
        DraftFamily.Closed => $"Put {{sample}} of {sample} solution into the small tube, stand it in the flask, and close it.",
        _ => $"Put {{sample}} of {sample} into the {plan.Vessel}.",
    };

    private static string Act(DraftPlan plan, string sample) => plan.Family switch
    {
        DraftFamily.Heated => plan.Flame ? "Heat gently at first, then strongly. Gas off; leave everything where it is." : "Heat it as you were shown.",
        DraftFamily.Gas => $"Tip the {sample} in, a little at a time. Keep the vessel open, or put a loose plug of cotton wool back, never a bung. Put the empty boat aside, to be weighed again with the rest.",
        DraftFamily.Closed => "Off the balance, tip it so that the two solutions mix. Keep it closed.",
        _ => $"Tip the {sample} into the beaker, add the solution and stir. Filter, wash, and bring all of the solid into the {plan.Vessel}.",
    };

    private static string Wait(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Heated => "Let it cool for the time that you are told. Nobody tests warmth by touch.",
        DraftFamily.Gas => "Swirl it and let it stand until no more bubbles come.",
        DraftFamily.Closed => "Wipe the outside dry.",
        _ => "Dry it as you were shown, and let it cool.",
    };
}
