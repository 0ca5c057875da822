using System.Globalization;
using Calx.App.Learning;
using Calx.App.Output;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Input;

/// <summary>What the command line says of the class to simulate, before it is held against the practical.</summary>
internal sealed record SimulationWords(
    int? Groups,
    int Rounds,
    string? Cause,
    IReadOnlyList<string> Conditions,
    double? Sample,
    double Resolution,
    double? Repeatability,
    string? Arms = null)
{
    /// <summary>The class, or null after telling each fault on standard error.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="learned">The learned numbers that it takes, or null.</param>
    /// <param name="surroundings">Where faults are told.</param>
    public SimulationChoice? Plan(Practical practical, AcceptedNumbers? learned, Surroundings surroundings)
    {
        string[] faults = [.. Faults(practical)];
        foreach (string fault in faults)
        {
            surroundings.Error.WriteLine($"calx simulate: {fault}");
        }

        if (faults.Length > 0)
        {
            return null;
        }

        double repeatability = Repeatability / Resolution ?? Balance.UsualRepeatabilityInDivisions;
        ArmsWord arms = ArmsOf(practical);
        var plan = new SimulationPlan(arms.Groups, new Balance(Resolution, repeatability), Rounds, Cause, Sample, arms: arms.Division);
        return new SimulationChoice(new Circumstances(learned?.Of(practical).Practical ?? practical, Conditions), Conditions, plan, LargestAmounts.Passed(practical, plan.Groups, Sample, Conditions), learned);
    }

    private IEnumerable<string> Faults(Practical practical)
    {
        if (!ScaleInterval.IsOne(Resolution))
        {
            yield return string.Create(
                CultureInfo.InvariantCulture, $"--resolution: no balance steps by {Resolution} g; expected 1, 2 or 5 times a power of ten");
        }

        if (Cause is string cause && practical.Faults.All(f => f.Cause != cause))
        {
            yield return $"--cause: {ConditionChoice.Unknown(practical, "cause", cause, [.. practical.Faults.Select(f => f.Cause)])}";
        }

        foreach (string fault in ConditionChoice.Faults(practical, Conditions))
        {
            yield return fault;
        }

        if (ArmsOf(practical).Fault is string wrong)
        {
            yield return $"--arms: {wrong}";
        }

        int most = practical.Procedure.OfType<RepeatEvent>().Select(r => r.Most).DefaultIfEmpty(1).Max();
        if (Rounds > most)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"--rounds: {practical.Id} allows {most} at most");
        }
    }

    private ArmsWord ArmsOf(Practical practical) => ArmsWord.Of(Arms, practical, Groups, UsualGroups.Of(practical));
}
