using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Planning;

/// <summary>The results table that a plan leads to, and which conclusions it allows.</summary>
internal sealed class PlannedTable
{
    /// <summary>Looks at a plan.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="rules">The practical's conclusions that readings can decide.</param>
    /// <param name="wanted">Ids of those asked for; empty for all that the practical always asks.</param>
    public PlannedTable(PlanSettings settings, IReadOnlyList<ConclusionRule> rules, IReadOnlyCollection<string> wanted)
    {
        Identifiability = Identifiability.Of(settings.Practical, [.. ReadingsOf(settings)], [], settings.Language);
        Wanted = [.. rules.Where(r => wanted.Count == 0 ? !r.Conclusion.IsOptional : wanted.Contains(r.Conclusion.Id))];
        Allowed = [.. Wanted.Where(r => Gives(r.Test.Quantity))];
    }

    /// <summary>Which quantities the table determines, and what the others lack.</summary>
    public Identifiability Identifiability { get; }

    /// <summary>The conclusions asked for.</summary>
    public IReadOnlyList<ConclusionRule> Wanted { get; }

    /// <summary>Those of them that the table allows.</summary>
    public IReadOnlyList<ConclusionRule> Allowed { get; }

    /// <summary>Whether the table determines a quantity.</summary>
    public bool Gives(string quantity) => Identifiability.Determined.Any(q => q.Id == quantity);

    /// <summary>Ids of the readings that a group takes: a repeated one as often as every group heats.</summary>
    private static IEnumerable<string> ReadingsOf(PlanSettings settings)
    {
        string[] repeated = [.. settings.Practical.Procedure.OfType<RepeatEvent>().SelectMany(r => r.Do.OfType<ReadEvent>()).Select(r => r.Reading)];
        foreach (ReadingDefinition reading in settings.Practical.Readings.Where(r => !settings.Unread.Contains(r.Id)))
        {
            for (int time = 1; time <= (repeated.Contains(reading.Id) ? settings.Heatings : 1); time++)
            {
                yield return TakenReading.IdOf(reading.Id, time);
            }
        }
    }
}
