namespace Calx.Practicals.Definition.Source;

/// <summary>
/// Checks what a file can be held to without knowing the room: a known hazard for each substance, no naked flame near
/// a flammable liquid, no gas in a vessel that can neither vent nor swell. It replaces no risk assessment.
/// </summary>
internal sealed class SafetyCheck(FaultList faults)
{
    /// <summary>Methanol, as files write it.</summary>
    private static readonly string[] Toxic = ["CH4O", "CH3OH"];

    public void Run(Bench bench, IReadOnlyList<ProcedureEvent> procedure, LessonPlan lesson)
    {
        foreach (Material material in bench.Materials.Where(m => IsHandled(m, bench) && !IsCovered(m, bench, lesson)))
        {
            faults.Warn(
                material.At,
                $"hazard of {material.Label} not known: look it up, and add an entry to 'hazards' with its control");
        }

        foreach (Material liquid in bench.Materials.Where(m => m.FlammableLiquid))
        {
            CheckFlames(liquid, lesson);
        }

        CheckSealed(bench, procedure);
    }

    /// <summary>A flammable liquid and a naked flame exclude each other, but for a burner that burns that liquid itself and comes filled
    /// and closed: then no bottle and no other flame is in the room.</summary>
    private void CheckFlames(Material liquid, LessonPlan lesson)
    {
        foreach (KitItem flame in lesson.Kit.Where(k => k.Flame))
        {
            string where = $"({flame.Label}, line {flame.At.Line})";
            if (flame.Fuel?.Material != liquid.Id)
            {
                faults.Add(liquid.At, $"{liquid.Label} is a flammable liquid, and the kit has a naked flame {where}; heat without a flame");
            }
            else if (!flame.Fuel.IsFilledByTechnician)
            {
                faults.Add(flame.At, $"{liquid.Label} is burnt in class {where}; only from a burner that the technician has filled and capped before the lesson: filledByTechnician: true");
            }
            else if (liquid.FormulaText is string formula && Toxic.Contains(formula))
            {
                faults.Add(liquid.At, $"{liquid.Label} is toxic and burns with a flame that is hard to see; it is not burnt in class, take ethanol");
            }
        }
    }

    private void CheckSealed(Bench bench, IReadOnlyList<ProcedureEvent> events)
    {
        foreach (ProcedureEvent step in events)
        {
            if (step is RepeatEvent repeat)
            {
                CheckSealed(bench, repeat.Do);
            }
            else if (step is ReactEvent react
                && bench.Places.Any(p => p.Id == react.In && p.SealedAndRigid)
                && bench.Reactions.FirstOrDefault(r => r.Id == react.Reaction) is Reaction reaction
                && MakesGas(reaction, bench))
            {
                faults.Add(step.At, $"'{reaction.EquationText}' makes a gas in a sealed, rigid vessel; use a bag or let it vent");
            }
        }
    }

    /// <summary>Air that a reaction takes in is everybody's; whatever is used or made is handled.</summary>
    private static bool IsHandled(Material material, Bench bench) =>
        !material.Air || bench.Reactions.Any(r => r.Products.Any(p => p.Material == material.Id));

    /// <summary>An entry covers what has the same formula in the same form: the oxide, and the film of it on the metal.</summary>
    private static bool IsCovered(Material material, Bench bench, LessonPlan lesson) =>
        bench.Materials.Any(other =>
            (other.Id == material.Id || (other.FormulaText is not null && other.FormulaText == material.FormulaText && other.Form == material.Form))
            && lesson.Hazards.Any(h => h.Material == other.Id));

    private static bool MakesGas(Reaction reaction, Bench bench) =>
        bench.Materials.Any(m => m.Air && reaction.Products.Any(p => p.Material == m.Id));
}
