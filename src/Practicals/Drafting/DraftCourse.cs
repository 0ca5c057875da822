using static Calx.Practicals.Drafting.DraftBench;

namespace Calx.Practicals.Drafting;

/// <summary>Parameters and procedure.</summary>
internal static class DraftCourse
{
    public static void Write(DraftText text, DraftPlan plan)
    {
        text.Add($$"""
            # Numbers in which groups differ, each with its law. 'ideal' is the value when all goes well: theory values follow from it.
            parameters:
              - { id: sample, label: mass that is weighed out, unit: g, law: { normal: [{{N(plan.Usual)}}, {{N(Math.Round(0.06 * plan.Usual, 6))}}] }, standing: judgement }
              - { id: done, label: share that reacts, ideal: 1, law: { beta: [60, 1.5, 0, 1] }, standing: judgement }
            """, last: false);
        text.Add(plan.Family switch
        {
            DraftFamily.Heated => """
                  - { id: lost, label: share that jumps out, ideal: 0, law: { beta: [1.2, 600, 0, 1] }, standing: judgement }
                  - { id: damp, label: water held by the vessel and driven off, unit: g, ideal: 0, law: { fixed: 0 }, standing: judgement }
                """,
            DraftFamily.Gas => """
                  - { id: lost, label: share that sprays out, ideal: 0, law: { fixed: 0 }, standing: judgement }
                  - { id: held, label: gas that stays dissolved, unit: g, ideal: 0, law: { fixed: 0 }, standing: judgement }
                """,
            DraftFamily.Closed => """
                  - { id: lost, label: share that drips off, ideal: 0, law: { fixed: 0 }, standing: judgement }
                """,
            _ => $$"""
                  - { id: lost, label: share of the product that is not collected, ideal: 0, law: { beta: [1.5, 60, 0, 1] }, standing: judgement }
                  - { id: damp, label: water held by the vessel and driven off, unit: g, ideal: 0, law: { fixed: 0 }, standing: judgement }
                  - { id: clings, label: water that clings to the product, unit: g, law: { lognormal: [{{N(Math.Round(0.4 * plan.Usual, 4))}}, 0.3] }, standing: judgement }
                  - { id: dried, label: share of the water left that one drying takes away, ideal: 1, law: { beta: [120, 1, 0, 1] }, standing: judgement }
                """,
        });
        text.Add("# What happens, in order. Every reading is taken, and every parameter used.\nprocedure:", last: false);
        foreach (string line in Before(plan).Concat(After(plan)))
        {
            text.Add(line, last: false);
        }

        text.Gap();
    }

    private static IEnumerable<string> Before(DraftPlan plan)
    {
        string others = string.Join(", ", plan.Shares.Select(s => $"{s.Key}: {N(s.Value)}"));
        string solution = $"  - add: {{ material: liquid, to: inside, mass: {N(plan.Solution)}, with: {{ {others} }} }}";
        string empty = "  - read: empty";
        string[] first = plan.Family switch
        {
            DraftFamily.Heated or DraftFamily.Product => ["  - wet: { water: damp, in: inside }", empty, "  - add: { material: start, to: inside, mass: sample }", "  - read: before"],
            DraftFamily.Gas => [solution, empty, "  - add: { material: start, to: aside, mass: sample }", "  - read: before", "  - move: { from: aside, to: inside, share: 1 }", "  - lose: { in: inside, share: lost }   # spray"],
            _ => [solution, empty, $"  - add: {{ material: liquid, to: aside, mass: sample, with: {{ start: {N(plan.Strength)} }} }}", "  - read: before", "  - move: { from: aside, to: inside, share: 1 }", "  - lose: { in: inside, share: lost }   # drops on the outside"],
        };
        string[] then = plan.Family switch
        {
            DraftFamily.Heated => ["  - lose: { in: inside, share: lost }"],
            DraftFamily.Product =>
            [
                "  - move: { from: inside, to: aside, materials: [start], share: 1 }",
                $"  - add: {{ material: liquid, to: aside, mass: {N(plan.Solution)}, with: {{ {others} }} }}",
                "  - react: { reaction: change, in: aside, fraction: done }",
                $"  - move: {{ from: aside, to: inside, materials: [{plan.Equation.Product!.Material}], share: 1 - lost }}",
                "  - wet: { water: clings, in: inside }",
            ],
            _ => [],
        };
        return [.. first.Where(l => plan.WeighsEmpty || l != empty), .. then];
    }

    private static IEnumerable<string> After(DraftPlan plan)
    {
        string[] round = plan.Family switch
        {
            DraftFamily.Heated => ["- dry: { in: inside, share: 1 }", "- react: { reaction: change, in: inside, fraction: done }", "- read: after"],
            DraftFamily.Gas => ["- react: { reaction: change, in: inside, fraction: done, cap: held }", "- read: after"],
            DraftFamily.Closed => ["- react: { reaction: change, in: inside, fraction: done }", "- read: after"],
            _ => ["- dry: { in: inside, share: dried }", "- read: after"],
        };
        return plan.Repeats == 1
            ? round.Select(l => $"  {l}")
            : ["  - repeat:", FormattableString.Invariant($"      most: {plan.Repeats}"), "      until: constant-mass", "      do:", .. round.Select(l => $"        {l}")];
    }
}
