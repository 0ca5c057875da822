using System.Text.Json.Serialization;
using Calx.App.Learning;
using Calx.App.Output;
using Calx.Practicals.Definition;

namespace Calx.App.Input;

/// <summary>What the command line says of a lesson to plan, before it is held against the practical.</summary>
public sealed record PlanWords
{
    public required int Groups { get; init; }

    /// <summary>Whether nothing was said of the groups: each practical has a usual number of its own.</summary>
    [JsonIgnore]
    public bool TakesUsualGroups { get; init; }

    public required int? Students { get; init; }

    public required int? Balances { get; init; }

    public required IReadOnlyList<string> Resolutions { get; init; }

    public required double? Repeatability { get; init; }

    public required double Minutes { get; init; }

    public required double? Mass { get; init; }

    public required int Trials { get; init; }

    public required int? Heatings { get; init; }

    public required bool NoEmpty { get; init; }

    public required bool Prepared { get; init; }

    public required double Stagger { get; init; }

    public required IReadOnlyList<string> Wanted { get; init; }

    public required IReadOnlyList<string> Conditions { get; init; }

    public required IReadOnlyList<string> Without { get; init; }

    public required IReadOnlyList<string> Moved { get; init; }

    public required IReadOnlyList<string> Alongside { get; init; }

    public required IReadOnlyList<string> Times { get; init; }

    public required IReadOnlyList<string> Kit { get; init; }

    public required IReadOnlyList<string> Prices { get; init; }

    public required double? Metre { get; init; }

    /// <summary>Which learned numbers were chosen, in the words of <see cref="PlanNumbers"/>; null for those that hold.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Numbers { get; init; }

    /// <summary>The learned numbers that the plan takes; null where it takes the practical's file as it is. Left out of what is kept then:
    /// a plan without them is kept as it always was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public AcceptedNumbers? Learned { get; init; }

    /// <summary>The plan, or null after telling each fault on standard error.</summary>
    public PlanChoice? Plan(Practical practical, Surroundings surroundings)
    {
        var check = new PlanCheck(practical, TakesUsualGroups ? this with { Groups = UsualGroups.Of(practical) } : this);
        PlanChoice? choice = check.Choice();
        foreach (string fault in check.Faults)
        {
            surroundings.Error.WriteLine($"calx plan: {fault}");
        }

        return check.Faults.Count == 0 ? choice : null;
    }

    /// <summary>Neither groups nor sample pass the practical's limits, not even on paper: a sheet is soon printed from it.</summary>
    public string? TooMuch(Practical practical) => LargestAmounts.Passed(practical, Groups, Mass, Conditions);
}
