using static Calx.Practicals.Drafting.DraftBench;
using static Calx.Practicals.Drafting.DraftText;

namespace Calx.Practicals.Drafting;

/// <summary>Steps, kit, limits and hazards.</summary>
internal static class DraftLesson
{
    public static void Write(DraftText text, DraftPlan plan)
    {
        string sample = plan.Equation.Sample.Name;
        string first = plan.Repeats > 1 ? ", round: first" : ", per: trial";
        string each = plan.Repeats > 1 ? ", round: each" : ", per: trial";
        string burner = plan.Flame ? ", kit: { burner: 1 }" : "";
        text.Add("# The lesson's steps in order, each with its least, likely and most minutes.\nsteps:", last: false);
        text.Add($$"""
              - { id: arrive, label: arrive and settle, minutes: [2, 4, 7], per: class, standing: judgement }
              - { id: brief, label: briefing and demonstration, minutes: [4, 8, 12], per: class, elsewhere: before, standing: judgement }
              - { id: set-up, label: collect and set up, minutes: {{plan.SetUp}}, standing: judgement }
            """, last: false);
        text.AddIf(plan.WeighsEmpty, "  - { id: weigh-empty, label: weigh before the sample goes in, minutes: [0.42, 0.75, 2], kit: { balance: 1 }, reading: empty, standing: judgement }");
        text.Add($"  - {{ id: weigh-before, label: {Quoted($"put in the {sample} and weigh")}, minutes: [0.42, 0.75, 2], kit: {{ balance: 1 }}, reading: before, standing: judgement }}", last: false);
        text.AddIf(plan.Flame, $"  - {{ id: check, label: let the teacher look before lighting, minutes: [0.2, 0.5, 1], kit: {{ teacher: 1 }}{first}, standing: judgement }}");
        text.Add($"  - {{ id: act, label: {Quoted(Act(plan))}, minutes: {plan.Act}{burner}{(plan.Family == DraftFamily.Product ? ", per: trial" : first)}, standing: judgement }}", last: false);
        text.AddIf(plan is { Family: DraftFamily.Heated, Repeats: > 1 }, $"  - {{ id: act-again, label: heat again, minutes: [3, 5, 8]{burner}, round: again, standing: judgement }}");
        text.Add($$"""
              - { id: wait, label: {{Quoted(Wait(plan))}}, minutes: {{plan.Wait}}{{each}}, standing: judgement }
              - { id: weigh-after, label: weigh afterwards, minutes: [0.42, 0.75, 2], kit: { balance: 1 }, reading: after{{each}}, standing: judgement }
              - { id: work-out, label: work it out, minutes: {{plan.WorkOut}}, elsewhere: after, standing: judgement }
              - { id: clear-up, label: clear up, minutes: [4, 6, 10], alongside: wait, standing: judgement }
              - { id: exit-talk, label: what did we find, minutes: [2, 4, 6], per: class, standing: judgement }

            # 'gasOff': minutes before the bell by which every flame is out.
            classroom: { gasOff: {{(plan.Flame ? 15 : 0)}}, late: 0.1, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }

            kit:
              - { id: vessel, label: {{Quoted(plan.Vessel)}}, perGroup: 1, breaks: 0.02, startsAgain: true }
              - { id: sample, label: {{Quoted(plan.Family == DraftFamily.Closed ? $"{sample} solution" : sample)}}, perGroup: {{N(plan.Usual)}}, unit: g, spareShare: 0.2, sample: true }
              - { id: goggles, label: eye protection, perStudent: 1 }
            """, last: false);
        text.AddIf(plan.Family != DraftFamily.Heated, $"  - {{ id: solution, label: {Quoted($"solution of {string.Join(" and ", plan.Equation.Others.Select(o => o.Name))}")}, perGroup: {N(plan.Solution)}, unit: g, spareShare: 0.2 }}");
        text.AddIf(plan.Family == DraftFamily.Gas, "  - { id: boat, label: weighing boat, perGroup: 1 }");
        text.AddIf(plan.Family == DraftFamily.Product, "  - { id: beaker, label: 'beaker, funnel and filter paper', perGroup: 1 }");
        text.AddIf(plan.Flame, "  - { id: burner, label: 'burner, tripod and heat-resistant mat', perGroup: 1, flame: true }\n  - { id: tongs, label: tongs, perGroup: 1 }");
        text.Gap().Add($$"""
            amounts: { usual: {{N(plan.Usual)}}, least: {{N(Math.Round(plan.Usual / 5, 6))}}, standing: judgement }

            # The most that a class may use: no plan goes beyond it. Yours to decide.
            limits: { largestSample: {{N(plan.Largest)}}, unit: g, note: 'drafted, not yet decided by you', standing: judgement }
            """);
        Hazards(text, plan);
    }

    private static void Hazards(DraftText text, DraftPlan plan)
    {
        text.Add("""
            # Hazards of the substances are not known here: look each up, in the form and strength in which you use it (safety data sheet, your
            # employer's guidance). 'calx practicals check' names each that is missing. An entry looks like this:
            #   - { of: start, hazard: what it does, control: what you do about it, standing: literature, source: 'where you looked it up' }
            # None of it replaces your employer's risk assessment.
            hazards:
              - { of: the eyes, hazard: splashes and dust, control: eye protection throughout, standing: common-practice }
            """, last: false);
        text.AddIf(plan.Flame, "  - { of: hot kit, hazard: 'burns; it does not look hot', control: 'leave it in place until it is cool, move it with tongs, nobody tests warmth by touch', standing: common-practice }");
        text.AddIf(plan.Family != DraftFamily.Heated, plan.Flammable
            ? "  - { of: flammable liquid, hazard: its vapour catches fire, control: 'no flame in the room, windows open, small amounts', standing: common-practice }"
            : "  - { of: liquid, hazard: a wet floor is slippery, control: wipe up spills at once, standing: common-practice }");
        text.Gap();
    }

    private static string Act(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Heated => "heat",
        DraftFamily.Gas => $"tip the {plan.Equation.Sample.Name} in and wait until the fizzing has stopped",
        DraftFamily.Closed => "tip the closed vessel so that the two mix",
        _ => "mix, filter and wash",
    };

    private static string Wait(DraftPlan plan) => plan.Family switch
    {
        DraftFamily.Heated => "let it cool",
        DraftFamily.Gas => "swirl and let it stand",
        DraftFamily.Closed => "wait, and wipe the outside dry",
        _ => "dry it and let it cool",
    };
}
