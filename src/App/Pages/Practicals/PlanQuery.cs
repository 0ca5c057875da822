using System.Globalization;
using Calx.App.Input;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Microsoft.AspNetCore.Http.Extensions;

namespace Calx.App.Pages.Practicals;

/// <summary>Words of a plan as the query of an address, which <see cref="PlanForm"/> reads.</summary>
public static class PlanQuery
{
    /// <summary>The query with its question mark; only what was said.</summary>
    public static string Of(PlanWords words)
    {
        var query = new QueryBuilder();
        Add(query, "groups", words.Groups);
        Add(query, "students", words.Students);
        Add(query, "balances", words.Balances);
        Add(query, "resolution", words.Resolutions.Count > 0 ? string.Join(' ', words.Resolutions) : null);
        Add(query, "repeatability", words.Repeatability);
        Add(query, "minutes", words.Minutes);
        Add(query, "mass", words.Mass);
        Add(query, "trials", words.Trials);
        Add(query, "heatings", words.Heatings);
        Add(query, "noempty", words.NoEmpty ? "yes" : null);
        Add(query, "prepared", words.Prepared ? "yes" : null);
        Add(query, "stagger", words.Stagger > 0 ? words.Stagger : null);
        AddAll(query, "want", words.Wanted);
        AddAll(query, "condition", words.Conditions);
        AddAll(query, "without", words.Without);
        AddAll(query, "move", words.Moved);
        AddAll(query, "alongside", words.Alongside);
        AddPairs(query, "time", words.Times);
        AddPairs(query, "kit", words.Kit);
        AddPairs(query, "price", words.Prices);
        Add(query, "metre", words.Metre);
        Add(query, "numbers", words.Numbers);
        return query.ToString();
    }

    /// <summary>The words of another plan that keeps what was said of times, kit, prices and conclusions.</summary>
    public static PlanWords Of(PlanWords words, PlanSettings plan)
    {
        double[] steps = [.. plan.Balances.Select(b => b.ResolutionInGrams)];
        return words with
        {
            Groups = plan.Groups,
            Students = plan.Students,
            Balances = steps.Length,
            Resolutions = [.. (steps.Distinct().Count() == 1 ? steps[..1] : steps).Select(s => s.ToString("0.########", CultureInfo.InvariantCulture))],
            Minutes = plan.Minutes,
            Mass = words.Mass is null && plan.SampleInGrams == new PlanSettings(plan.Practical, 1, plan.Balances, 1).SampleInGrams ? null : plan.SampleInGrams,
            Trials = plan.Trials,
            Heatings = plan.Heatings,
            Prepared = plan.Prepared,
            Stagger = plan.StaggerInMinutes,
            Without = [.. plan.LeftOut],
            Moved = [.. plan.Moved],
            Alongside = [.. plan.Alongside],
            NoEmpty = plan.Unread.Contains("empty"),
        };
    }

    private static void Add(QueryBuilder query, string name, IFormattable? value) => Add(query, name, value?.ToString(null, CultureInfo.InvariantCulture));

    private static void Add(QueryBuilder query, string name, string? value)
    {
        if (value is not null)
        {
            query.Add(name, value);
        }
    }

    private static void AddAll(QueryBuilder query, string name, IEnumerable<string> values) => query.Add(name, values);

    /// <summary>Words such as <c>cool=10,12,20</c>.</summary>
    private static void AddPairs(QueryBuilder query, string kind, IEnumerable<string> pairs)
    {
        foreach (string[] parts in pairs.Select(p => p.Split('=')))
        {
            query.Add($"{kind}.{parts[0]}", parts[1].Replace(',', ' '));
        }
    }
}
