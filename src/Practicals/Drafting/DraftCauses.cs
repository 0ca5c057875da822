using static Calx.Practicals.Drafting.DraftBench;

namespace Calx.Practicals.Drafting;

/// <summary>What can go wrong, what is seen of it, and what can still be done.</summary>
internal static class DraftCauses
{
    public static void Write(DraftText text, DraftPlan plan)
    {
        text.Add("# What can go wrong, in how many of all groups ('rate'), and what it changes. 'caution' tells how to avoid it.\nfaults:", last: false);
        text.Add(Own(plan), last: false);
        text.AddIf(plan is { Family: DraftFamily.Heated, Flame: true }, """
              - cause: weighed-warm
                label: the vessel was still warm at the last weighing
                caution: weigh only when the cooling time is over
                rate: 0.18
                warm: { reading: after, excessInKelvin: { rectangular: [8, 150] }, milligramsPerKelvin: { rectangular: [0.12, 0.30] } }
                standing: judgement
            """);
        text.Add("""
              - cause: zero-shifted
                label: one reading was taken on another balance or after the balance was set to zero anew
                caution: keep to one balance, and check that it shows zero before each reading
                rate: 0.12
                zero: { shift: { normal: [0, 0.05] } }
                standing: judgement
              - cause: misread
                label: a reading was misread or miscopied
                caution: one reads aloud, the other writes and reads back
                rate: 0.08
                pen: { swapped: 0.35, wrongDigit: 0.25, wholeGram: 0.25, droppedZero: 0.15 }
                standing: judgement
            """);
        text.Add("# What a group may see. 'stop: true' stops it before anything is computed.\nobservations:", last: false);
        text.Add(Seen(plan), last: false);
        text.AddIf(plan.Flame, """
              - { id: cracked, label: the vessel is cracked, stop: true, standing: common-practice }
              - { id: burning-outside, label: something burns outside the vessel, stop: true, standing: common-practice }
            """);
        text.Add("""
              - { id: spill, label: something was spilt, stop: true, standing: common-practice }
              - { id: choking-smell, label: a choking smell, stop: true, standing: common-practice }
              - { id: injury, label: somebody is hurt, stop: true, standing: common-practice }
            """);
        text.Add("# What can still be done to find a cause, with its minutes. Nobody tests warmth by touch, and nobody smells at it.\nactions:", last: false);
        text.AddIf(plan.Repeats > 1, $"  - {{ id: once-more, label: {DraftText.Quoted(OnceMore(plan))}, kind: reheat, minutes: 15, standing: judgement }}");
        text.Add("""
              - { id: read-again, label: read the display or the paper record again, kind: reread, minutes: 1, standing: judgement }
              - { id: check-zero, label: see what the balance shows with nothing on it, kind: zero, minutes: 1, standing: judgement }
            """);
        text.AddIf(plan is { Family: DraftFamily.Heated, Flame: true }, """
            # Minutes since the flame was put out, and kelvin above the room: those of a porcelain crucible on its triangle. Measure your own.
            cooling: { reading: after, points: [[3.3, 78], [5.2, 38], [7, 20], [9.3, 10], [12, 5], [14.5, 2.6]], relativeSpread: 0.3, standing: judgement }
            """, last: true);
    }

    private static string OnceMore(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Heated => "heat once more, let it cool and weigh again",
        DraftFamily.Product => "dry it once more, let it cool and weigh again",
        _ => "swirl it, wait and weigh again",
    };

    private static string NotAll(string rate, string caution) => $$"""
          - cause: not-all-reacted
            label: some of it had not reacted
            caution: {{caution}}
            rate: {{rate}}
            set: { done: { beta: [2, 1.5, 0, 1] } }
            standing: judgement
        """;

    private static string Own(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Heated => NotAll("0.25", "heat to constant mass") + "\n" + """
              - cause: product-lost
                label: some of it jumped or was blown out
                caution: begin with a small flame
                rate: 0.15
                set: { lost: { lognormal: [0.03, 1] } }
                standing: judgement
              - cause: damp-vessel
                label: water in the vessel was driven off
                caution: heat the empty vessel first and keep it dry
                rate: 0.12
                set: { damp: { exponential: [0.03] } }
                standing: judgement
            """,
        DraftFamily.Gas => NotAll("0.2", "swirl, and wait until no more bubbles come") + "\n" + $$"""
              - cause: spilled
                label: drops sprayed out with the gas
                caution: a loose plug of cotton wool in the neck, never a bung
                rate: 0.15
                set: { lost: { lognormal: [0.004, 0.8] } }
                standing: judgement
              - cause: gas-kept-back
                label: some gas was still dissolved
                caution: swirl and wait
                rate: 0.25
                set: { held: { lognormal: [{{N(Math.Round(0.04 * plan.Usual, 4))}}, 0.6] } }
                standing: judgement
            """,
        DraftFamily.Closed => """
              - cause: spilled
                label: some of it dripped off
                caution: keep it closed, and tip it slowly
                rate: 0.15
                set: { lost: { lognormal: [0.003, 0.8] } }
                standing: judgement
              - cause: extra-mass
                label: drops of water on the outside
                caution: wipe the outside dry before every weighing
                rate: 0.15
                gain: { reading: after, mass: { lognormal: [0.05, 0.8] } }
                standing: judgement
            """,
        _ => NotAll("0.15", "stir, and give it time") + "\n" + """
              - cause: product-lost
                label: some of the solid was not collected
                caution: rinse all of it out of the beaker
                rate: 0.3
                set: { lost: { beta: [2, 18, 0, 1] } }
                standing: judgement
              - cause: not-dry
                label: it was still damp when it was weighed
                caution: dry to constant mass
                rate: 0.25
                set: { dried: { beta: [3, 2, 0, 1] } }
                standing: judgement
            """,
    };

    private static string Seen(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Heated => "  - { id: jumped, label: some of it was seen to jump out, likelihood: { product-lost: 0.6, otherwise: 0.1 }, standing: judgement }",
        DraftFamily.Gas => "  - { id: bubbles, label: bubbles still rose at the last weighing, likelihood: { not-all-reacted: 0.5, gas-kept-back: 0.4, otherwise: 0.08 }, standing: judgement }",
        DraftFamily.Closed => "  - { id: drops, label: drops were seen on the outside, likelihood: { extra-mass: 0.6, otherwise: 0.1 }, standing: judgement }",
        _ => "  - { id: clung, label: the solid clung together like something damp, likelihood: { not-dry: 0.5, otherwise: 0.1 }, standing: judgement }",
    };
}
