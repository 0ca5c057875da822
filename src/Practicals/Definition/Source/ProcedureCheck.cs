namespace Calx.Practicals.Definition.Source;

/// <summary>Checks that procedure, readings and parameters fit together.</summary>
internal sealed class ProcedureCheck(FaultList faults)
{
    /// <summary>Checks what can be: where a section has a fault, nothing is said of what hangs on it.</summary>
    public void Run(Practical practical, SoundSections sections)
    {
        if (!sections.Are(FileSection.Procedure, FileSection.Readings))
        {
            return;
        }

        foreach (ReadingDefinition reading in practical.Readings)
        {
            CheckTaken(reading, TimesTaken(practical.Procedure, reading.Id));
        }

        if (sections.Are(FileSection.Parameters, FileSection.Bench))
        {
            CheckParameters(practical);
        }

        if (sections.Are(FileSection.Findings, FileSection.Quantities))
        {
            CheckConstantMass(practical);
            CheckAccepted(practical);
            foreach (JudgementAnswer.OfCompleteness answer in practical.FurtherAnswers.OfType<JudgementAnswer.OfCompleteness>().Where(a => a.Rule is null))
            {
                faults.AddHarmless(answer.At, "whether it was complete cannot be asked, because 'findings' has no 'constantMass'");
            }
        }
    }

    private void CheckParameters(Practical practical)
    {
        HashSet<string> used = [.. UsedNames(practical)];
        foreach (Parameter parameter in practical.Parameters.Where(p => !used.Contains(p.Id)))
        {
            faults.AddHarmless(parameter.At, $"the parameter '{parameter.Id}' is used by no event and no pan; use it in the procedure, or leave it out");
        }

        foreach (Parameter parameter in practical.Parameters.Where(p => practical.Gauges.Any(g => g.Id == p.Id)))
        {
            faults.Add(parameter.At, $"'{parameter.Id}' is the id of a gauge too; in a formula it could mean either");
        }

        CheckGauges(practical);
    }

    /// <summary>A gauge that a formula or a reading asks for has been set before.</summary>
    private void CheckGauges(Practical practical)
    {
        HashSet<string> gauges = [.. practical.Gauges.Select(g => g.Id)];
        HashSet<string> set = [];
        foreach (ProcedureEvent step in Flat(practical.Procedure))
        {
            IEnumerable<string> asked = step is ReadEvent read && practical.Reading(read.Reading).Gauge is string shown
                ? [shown]
                : step is RepeatEvent ? [] : step.Formulas.SelectMany(f => f.Names).Where(gauges.Contains);
            foreach (string gauge in asked.Where(g => !set.Contains(g)).Distinct())
            {
                faults.Add(step.At, $"the gauge '{gauge}' is used here before a 'set' event gives it a value");
            }

            if (step is SetEvent given)
            {
                set.Add(given.Gauge);
            }
        }
    }

    private void CheckTaken(ReadingDefinition reading, int times)
    {
        if (times == 0)
        {
            faults.Add(reading.At, $"the procedure never takes the reading '{reading.Id}'; expected an event 'read: {reading.Id}'");
        }
        else if (times != reading.Repeats)
        {
            faults.Add(
                reading.At,
                $"the reading '{reading.Id}' has repeats: {reading.Repeats}, but the procedure takes it up to {times} times");
        }
    }

    /// <summary>What has no accepted value cannot be held against one.</summary>
    private void CheckAccepted(Practical practical)
    {
        if (practical.Findings.NoAccepted is null)
        {
            return;
        }

        foreach (ConclusionDefinition conclusion in practical.Conclusions.Where(c =>
            c.Test is ConclusionTest.Within or ConclusionTest.Chooses && c.Test.Quantity == practical.Findings.Key))
        {
            faults.Add(
                conclusion.At,
                $"'{conclusion.Id}' needs an accepted value, and 'findings' says with 'noAccepted' that there is none; 'known' asks how closely the class knows it");
        }
    }

    /// <summary>A rule of constant mass and a repetition until constant mass need each other.</summary>
    private void CheckConstantMass(Practical practical)
    {
        ConstantMassDefinition? rule = practical.Findings.ConstantMass;
        RepeatEvent? loop = Flat(practical.Procedure).OfType<RepeatEvent>()
            .FirstOrDefault(e => e.Until == StopRule.ConstantMass);
        if (loop is not null && rule is null)
        {
            faults.Add(loop.At, "this repeats until constant mass, but 'findings' has no 'constantMass' that says when that is");
        }

        if (rule is not null && practical.Reading(rule.Reading).Repeats < 2)
        {
            faults.Add(rule.At, $"constant mass needs a reading taken more than once; '{rule.Reading}' is taken once");
        }
    }

    private static int TimesTaken(IReadOnlyList<ProcedureEvent> events, string reading) => events.Sum(e => e switch
    {
        ReadEvent read => read.Reading == reading ? 1 : 0,
        RepeatEvent repeat => repeat.Most * TimesTaken(repeat.Do, reading),
        _ => 0,
    });

    private static IEnumerable<ProcedureEvent> Flat(IReadOnlyList<ProcedureEvent> events) =>
        events.SelectMany(e => e is RepeatEvent repeat ? [e, .. Flat(repeat.Do)] : new[] { e });

    private static IEnumerable<string> UsedNames(Practical practical) =>
    [
        .. Flat(practical.Procedure).SelectMany(e => e.Formulas).SelectMany(f => f.Names),
        .. practical.Readings.SelectMany(r => r.Pan.Minus?.Names ?? []),
    ];
}
