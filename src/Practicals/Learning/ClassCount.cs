namespace Calx.Practicals.Learning;

/// <summary>How often something happened in all lessons of one class.</summary>
/// <param name="School">The school.</param>
/// <param name="ClassName">The class.</param>
/// <param name="Tried">How often it could have happened, from 0.</param>
/// <param name="Happened">How often it did; a sum of probabilities where that is not certain, 0 to <paramref name="Tried"/>.</param>
internal readonly record struct ClassCount(string School, string ClassName, int Tried, double Happened)
{
    /// <summary>One count a class, in an order that does not depend on that of the lessons.</summary>
    public static IReadOnlyList<ClassCount> Together(IEnumerable<ClassCount> lessons) =>
    [
        .. lessons.GroupBy(l => (l.School, l.ClassName))
            .Select(c => new ClassCount(c.Key.School, c.Key.ClassName, c.Sum(l => l.Tried), c.Select(l => l.Happened).Order().Sum()))
            .Where(c => c.Tried > 0)
            .OrderBy(c => c.School, StringComparer.Ordinal).ThenBy(c => c.ClassName, StringComparer.Ordinal),
    ];
}
