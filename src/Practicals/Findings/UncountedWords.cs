using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>Says which groups stand in no result of a class, and why: a table without them must not read as if they were not there.</summary>
public static class UncountedWords
{
    /// <summary>A sentence for all with simulated readings, and one for each that uses another's.</summary>
    /// <param name="uncounted">The groups, in the order in which they are to be named.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<UncountedGroup> uncounted)
    {
        ArgumentNullException.ThrowIfNull(uncounted);
        return [.. Both(uncounted).Select(s => s.Text)];
    }

    /// <summary>The same as sentences of a class's conclusion.</summary>
    internal static IEnumerable<ConclusionSentence> Sentences(IReadOnlyList<UncountedGroup> uncounted) =>
        Both(uncounted).Select(s => new ConclusionSentence(ConclusionTopic.Uncounted, s.Text, s.WithoutNames));

    private static IEnumerable<(string Text, string WithoutNames)> Both(IReadOnlyList<UncountedGroup> uncounted)
    {
        string[] simulated = [.. uncounted.OfType<UncountedGroup.Simulated>().Select(g => g.Name)];
        if (simulated.Length > 0)
        {
            string goesOn = simulated.Length == 1
                ? "goes on with simulated readings and is not counted." : "go on with simulated readings and are not counted.";
            yield return ($"{Named(simulated)} {goesOn}", $"{WithoutNames(simulated)} {goesOn}");
        }

        foreach (UncountedGroup.Joined joined in uncounted.OfType<UncountedGroup.Joined>())
        {
            yield return (
                $"{Named([joined.Name])} uses the readings of {GroupReadings.InSentence(joined.Other)} and is not counted a second time.",
                $"{WithoutNames([joined.Name])} uses the readings of {(IsNumber(joined.Other) ? $"group {joined.Other}" : "another")} and is not counted a second time.");
        }
    }

    private static string Named(string[] names)
    {
        string first = !names.All(IsNumber) ? string.Empty : names.Length == 1 ? "Group " : "Groups ";
        return first + (names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}");
    }

    /// <summary>A number gives nobody's name away.</summary>
    private static string WithoutNames(string[] names) => names.All(IsNumber) ? Named(names)
        : names.Length == 1 ? "One group" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{names.Length} groups");

    private static bool IsNumber(string name) => name.All(char.IsAsciiDigit);
}
