using static Calx.Practicals.Drafting.DraftBench;
using static Calx.Practicals.Drafting.DraftText;

namespace Calx.Practicals.Drafting;

/// <summary>Quantities, what the class is judged on, and conclusions.</summary>
internal static class DraftAsked
{
    public static void Write(DraftText text, DraftPlan plan)
    {
        var sums = new DraftSums(plan);
        text.Add("# Values asked of the readings: formulas over them; M(MgO) is a molar mass.\nquantities:", last: false);
        text.Add($"  - {{ id: sampleMass, label: {Quoted($"mass of {sums.SampleWords}")}, unit: g, formula: {sums.Sample} }}", last: false);
        text.AddIf(plan.Family != DraftFamily.Product, "  - { id: massChange, label: change in mass, unit: g, formula: after - before }");
        text.AddIf(plan.Family is DraftFamily.Heated or DraftFamily.Product, $"  - {{ id: productMass, label: {Quoted($"mass of {sums.LeftWords}")}, unit: g, formula: {sums.Left} }}");
        text.AddIf(plan.Family == DraftFamily.Gas, $"  - {{ id: gasMass, label: {Quoted($"mass of {sums.GasWords}")}, unit: g, formula: before - after }}");
        text.AddIf(sums.Hydrate is not null, "  - { id: waterMass, label: mass of water driven off, unit: g, formula: before - after }");
        text.AddIf(sums.Hydrate is not null, $"  - {{ id: residueFraction, label: {Quoted($"mass of {sums.LeftWords} for 1 g of {plan.Equation.Sample.Name}")}, unit: '1', formula: ({sums.Left}) / ({sums.Sample}) }}");
        text.AddIf(plan.Family != DraftFamily.Closed, $"  - {{ id: {sums.Key}, label: {Quoted(sums.KeyLabel)}, unit: '1', formula: {sums.KeyFormula} }}");
        text.AddIf(plan.Family == DraftFamily.Product, $"  - {{ id: yield, label: percentage yield, unit: '%', formula: 100 * ({sums.Left}) / ({sums.Ratio} * ({sums.Sample})) }}");
        text.Gap();
        Findings(text, plan, sums);
        text.Add("conclusions:", last: false);
        text.Add(sums.Conclusions);
    }

    private static void Findings(DraftText text, DraftPlan plan, DraftSums sums)
    {
        text.Add($$"""
            findings:
              key: {{sums.Key}}
              change: {{(plan.Family == DraftFamily.Product ? "productMass" : "massChange")}}
              sample: sampleMass
              expect: {{sums.Expect}}
              # How far a group lies from what its sample should give; causes that move it by less do not count.
              asExpected: { difference: {{sums.Difference}}, divisions: 2, share: 0.05, standing: judgement }
            """, last: false);
        text.AddIf(
            sums.Hydrate?.WholeFormula is not null && plan.WeighsEmpty,
            $"  formula: {{ elements: {{ {Key(sums.Hydrate?.Salt.Text ?? "H")}: productMass, H2O: waterMass }}, largest: {N(Math.Max(12, 2 * Math.Ceiling(sums.KeyValue)))}, accepted: {Key(sums.Hydrate?.WholeFormula ?? "H")} }}");
        text.AddIf(plan.Repeats > 1, "  constantMass: { reading: after, toleranceInDivisions: 2, leastConversion: 0.5, standing: judgement }");
        text.AddIf(
            plan.Repeats > 1 && plan.Family != DraftFamily.Closed,
            $"  decision: {{ matters: {N(Math.Max(0.001, Math.Round(0.05 * sums.KeyValue, 3)))}, worthMinutes: 60, standing: judgement }}   # once more is worth it while the key value would still move by so much");
        text.Gap();
    }
}
