using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>The groups of a class that did the practical in one way: one of its arms, or the ordinary way.</summary>
/// <param name="Arm">The arm; null for the ordinary way.</param>
/// <param name="Places">Places of the groups in the table.</param>
internal sealed record ArmGroups(Arm? Arm, IReadOnlyList<int> Places)
{
    /// <summary>Words that say of a group that it did nothing special.</summary>
    private static readonly HashSet<string> Ordinary = ["", "-", "none", "no", "ordinary", "ordinary way", "usual", "normal", "control"];

    /// <summary>The ways of a class, the ordinary one first and then the arms in the order of the file. A word that names no arm stands for
    /// the ordinary way.</summary>
    public static IReadOnlyList<ArmGroups> Of(Practical practical, ClassReadings readings)
    {
        Arm?[] done = [.. readings.Groups.Select(g => Meant(practical, g.Remarks.Arm))];
        return
        [
            .. new Arm?[] { null }.Concat(practical.Arms)
                .Select(arm => new ArmGroups(arm, [.. Enumerable.Range(0, done.Length).Where(i => done[i] == arm)]))
                .Where(way => way.Places.Count > 0),
        ];
    }

    /// <summary>Words in the column of arms that name none of the practical's, once each.</summary>
    public static IReadOnlyList<string> Unknown(Practical practical, ClassReadings readings) => practical.Arms.Count == 0 ? [] :
    [
        .. readings.Groups.Select(g => g.Remarks.Arm?.Trim()).OfType<string>()
            .Where(word => !Ordinary.Contains(HeadingText.Fold(word)) && Meant(practical, word) is null).Distinct(StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The readings of these groups alone.</summary>
    public ClassReadings Part(ClassReadings readings) => new(
        readings.PracticalId, [.. Places.Select(i => readings.Groups[i])], readings.Balance, readings.Columns, isSimulated: readings.IsSimulated);

    private static Arm? Meant(Practical practical, string? word)
    {
        string said = HeadingText.Fold(word?.Trim() ?? "");
        return practical.Arms.FirstOrDefault(a => HeadingText.Fold(a.Id) == said || HeadingText.Fold(a.Label) == said);
    }
}
