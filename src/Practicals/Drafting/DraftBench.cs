using static Calx.Practicals.Drafting.DraftText;

namespace Calx.Practicals.Drafting;

/// <summary>Materials, reaction, what stands on the pan, and the readings.</summary>
internal static class DraftBench
{
    public static void Write(DraftText text, DraftPlan plan)
    {
        DraftEquation equation = plan.Equation;
        text.Add("# 'air: true' comes from the air or leaves into it, and is never on the pan.\nmaterials:", last: false);
        foreach (DraftSpecies one in equation.All)
        {
            text.Add($"  - {{ id: {one.Material}, label: {Quoted(one.Name)}, formula: {Key(one.Text)}{(one.IsGas ? ", air: true" : "")} }}", last: false);
        }

        text.AddIf(plan.Family != DraftFamily.Heated && !plan.Flammable, "  - { id: liquid, label: water, formula: H2O }");
        text.AddIf(plan.Flammable, "  - { id: liquid, label: flammable liquid, flammableLiquid: true }   # write its name");
        text.Gap().Add($$"""
            # Balanced. 'limiting' is what is weighed out: a share of it reacts.
            reactions:
              - id: change
                equation: {{Quoted(equation.Text)}}
                limiting: start
                materials: { {{string.Join(", ", equation.All.Select(s => $"{Key(s.Text)}: {s.Material}"))}} }

            # Parts stand on the pan and do not react; places hold what does.
            parts:
              - { id: vessel, label: {{Quoted(plan.Vessel)}}, mass: { typical: {{N(plan.VesselMass)}}, low: {{N(plan.VesselMass * 0.7)}}, high: {{N(plan.VesselMass * 1.4)}} }, standing: judgement }
            """, last: false);
        text.AddIf(plan.Family == DraftFamily.Gas, "  - { id: boat, label: weighing boat, mass: { typical: 1.5, low: 0.8, high: 3 }, standing: judgement }");
        text.Gap().Add("places:", last: false);
        text.Add($"  - {{ id: inside, label: {Quoted($"in the {plan.Vessel}")}{(plan.Family == DraftFamily.Closed ? ", sealedAndRigid: true" : "")} }}", last: false);
        text.AddIf(plan.Family == DraftFamily.Gas, "  - { id: aside, label: in the boat }");
        text.AddIf(plan.Family == DraftFamily.Closed, "  - { id: aside, label: in the small tube }");
        text.AddIf(plan.Family == DraftFamily.Product, "  - { id: aside, label: in the beaker }");
        text.Gap();
        Readings(text, plan);
    }

    private static void Readings(DraftText text, DraftPlan plan)
    {
        string pan = plan.Family switch
        {
            DraftFamily.Gas => "{ parts: [vessel, boat], places: [inside, aside] }",
            DraftFamily.Closed => "{ parts: [vessel], places: [inside, aside] }",
            _ => "{ parts: [vessel], places: [inside] }",
        };
        text.Add("# What every group weighs, with what is on the pan. 'aliases' are other headings of your own tables; none may stand twice.\nreadings:", last: false);
        DraftLabels labels = DraftLabels.Of(plan);
        text.AddIf(plan.WeighsEmpty, $"  - {{ id: empty, label: {Quoted(labels.Empty)}, unit: g, pan: {pan}, aliases: [empty, m1] }}");
        text.Add($"  - {{ id: before, label: {Quoted(labels.Before)}, unit: g, pan: {pan}, aliases: [before, m2] }}", last: false);
        text.Add(
            plan.Repeats > 1
                ? $"  - {{ id: after, label: {Quoted(labels.After)}, unit: g, pan: {pan}, repeats: {plan.Repeats}, repeatLabel: {Quoted(labels.Again)}, aliases: [after, m3] }}"
                : $"  - {{ id: after, label: {Quoted(labels.After)}, unit: g, pan: {pan}, aliases: [after, m3] }}");
    }

    /// <summary>A formula as YAML takes it: in quotes where it has a bracket that YAML would take for its own.</summary>
    public static string Key(string formula) => formula.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '(' or ')') && char.IsAsciiLetter(formula[0]) ? formula : Quoted(formula);

    public static string N(double number) => DraftWords.Plain(number);
}
