using Calx.App.Output;
using Calx.Chemistry.Elements;

namespace Calx.App.Input;

/// <summary>The sets of atomic weights that students may use, <c>--ar-set</c>.</summary>
internal static class AtomicWeightChoice
{
    /// <summary>All rounded sets: a class's tables differ in their decimals.</summary>
    public const string School = "school";

    private static readonly string[] SchoolSets = ["school-1dp", "school-0dp", "school-0dp-cu64", "iupac-abridged"];

    /// <summary>The names of all sets.</summary>
    public static IReadOnlyList<string> Names => [.. AtomicWeightSets.All.Select(s => s.Name)];

    /// <summary>The sets of one name, <c>school</c> being several; null where there is none of that name.</summary>
    public static IReadOnlyList<AtomicWeights>? Named(string name) =>
        name == School ? [.. SchoolSets.Select(AtomicWeightSets.Named)] : AtomicWeightSets.TryFind(name, out _) ? [AtomicWeightSets.Named(name)] : null;

    /// <summary>The sets chosen, or null after telling of an unknown one on standard error; nothing chosen is <c>school</c>.</summary>
    public static IReadOnlyList<AtomicWeights>? Of(IReadOnlyList<string> chosen, Surroundings surroundings)
    {
        string[] names = [.. (chosen.Count == 0 ? [School] : chosen).SelectMany(n => n == School ? SchoolSets : [n]).Distinct(StringComparer.Ordinal)];
        foreach (string unknown in names.Where(n => !AtomicWeightSets.TryFind(n, out _)))
        {
            surroundings.Error.WriteLine($"calx mark: --ar-set: there is no set '{unknown}'; expected {School}, {string.Join(", ", Names)}");
            return null;
        }

        return [.. names.Select(AtomicWeightSets.Named)];
    }
}
