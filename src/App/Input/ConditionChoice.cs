using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;

namespace Calx.App.Input;

/// <summary>What is said of a class, <c>--condition</c>: words of the practical's own list.</summary>
internal static class ConditionChoice
{
    /// <summary>What is wrong with each word that the practical does not have.</summary>
    public static IEnumerable<string> Faults(Practical practical, IReadOnlyList<string> conditions)
    {
        string[] known = [.. practical.Conditions.Select(c => c.Id)];
        foreach (string condition in conditions.Where(c => !known.Contains(c)))
        {
            yield return $"--condition: {Unknown(practical, "condition", condition, known)}";
        }
    }

    /// <summary>A word that is not on a list of the practical, with the list and the nearest word on it.</summary>
    public static string Unknown(Practical practical, string kind, string word, string[] known)
    {
        string expected = known.Length == 0 ? "it knows none" : $"expected {string.Join(", ", known)}";
        string near = Slips.Nearest(word, known) is string nearest ? $"; did you mean {nearest}?" : "";
        return $"{practical.Id} has no {kind} '{word}'; {expected}{near}";
    }
}
