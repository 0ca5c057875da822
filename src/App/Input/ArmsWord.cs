using System.Globalization;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Input;

/// <summary>How the groups of an invented class are divided among the practical's arms: <c>covered=4,ordinary=8</c>, or
/// <c>covered,ordinary</c> for as many in each.</summary>
internal sealed class ArmsWord
{
    /// <summary>What groups do that do no arm.</summary>
    private const string Ordinary = "ordinary";

    private ArmsWord(ArmDivision? division, int groups, string? fault) => (Division, Groups, Fault) = (division, groups, fault);

    /// <summary>The division; null where all do it the ordinary way.</summary>
    public ArmDivision? Division { get; }

    /// <summary>How many groups there are.</summary>
    public int Groups { get; }

    /// <summary>What is wrong with the word, or null.</summary>
    public string? Fault { get; }

    /// <summary>Reads it.</summary>
    /// <param name="word">The word; null leaves the division to the practical's file.</param>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">Groups asked for, or null.</param>
    /// <param name="usual">Groups where neither says how many.</param>
    public static ArmsWord Of(string? word, Practical practical, int? groups, int usual)
    {
        if (word is null)
        {
            return new ArmsWord(ArmDivision.Of(practical, groups ?? usual), groups ?? usual, null);
        }

        if (practical.Arms.Count == 0)
        {
            return Wrong($"{practical.Id} has no arms; leave the option out");
        }

        var ways = new List<(Arm? Arm, int? Groups)>();
        foreach (string part in word.Split(',', StringSplitOptions.TrimEntries))
        {
            string[] halves = part.Split('=', StringSplitOptions.TrimEntries);
            Arm? arm = practical.Arms.FirstOrDefault(a => a.Id == halves[0]);
            if (arm is null && halves[0] != Ordinary)
            {
                return Wrong(ConditionChoice.Unknown(practical, "arm", halves[0], [Ordinary, .. practical.Arms.Select(a => a.Id)]));
            }

            if (ways.Any(w => w.Arm == arm))
            {
                return Wrong($"'{halves[0]}' stands there twice; name each way once");
            }

            if (halves.Length > 2 || (halves.Length == 2 && !IsCount(halves[1], out _)))
            {
                return Wrong($"'{part}' cannot be read; expected an arm and how many groups do it, such as {practical.Arms[0].Id}=4");
            }

            ways.Add((arm, halves.Length == 2 && IsCount(halves[1], out int count) ? count : null));
        }

        return Divided(ways, groups, usual);
    }

    private static ArmsWord Divided(List<(Arm? Arm, int? Groups)> ways, int? groups, int usual)
    {
        if (ways.Any(w => w.Groups is null) && ways.Any(w => w.Groups is not null))
        {
            return Wrong("say of every way how many groups do it, or of none");
        }

        int all = ways.Sum(w => w.Groups) is int counted and > 0 ? counted : groups ?? usual;
        if (groups is int asked && asked != all)
        {
            return Wrong(string.Create(CultureInfo.InvariantCulture, $"the ways have {all} groups together, but --groups says {asked}; leave one out"));
        }

        if (all < ways.Count || all > SimulationPlan.MostGroups)
        {
            return Wrong(string.Create(CultureInfo.InvariantCulture, $"{all} groups cannot do {ways.Count} ways; expected a group for each, {SimulationPlan.MostGroups} at most"));
        }

        (Arm? Arm, int Groups)[] each = [.. ways.Select((w, i) => (w.Arm, w.Groups ?? ((all / ways.Count) + (i < all % ways.Count ? 1 : 0))))];
        return new ArmsWord(each is [(null, _)] ? null : ArmDivision.Counted(each), all, null);
    }

    private static bool IsCount(string text, out int count) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count) && count is > 0 and <= SimulationPlan.MostGroups;

    private static ArmsWord Wrong(string fault) => new(null, 1, fault);
}
