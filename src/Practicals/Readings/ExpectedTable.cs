using Calx.Practicals.Definition;

namespace Calx.Practicals.Readings;

/// <summary>What a practical expects of a class's table: its columns, and the words it is spoken of with.</summary>
public sealed class ExpectedTable
{
    /// <summary>Takes the expectations.</summary>
    /// <param name="practicalId">Id of the practical.</param>
    /// <param name="columns">Readings in the practical's order, then ready-made columns.</param>
    /// <param name="vesselLabels">Labels of the parts that stand on the pan: crucible, lid.</param>
    /// <param name="materialNames">Formula to name of what is weighed: MgO to magnesium oxide.</param>
    /// <exception cref="ArgumentException">The id is empty, there is no column, or an id is there twice.</exception>
    public ExpectedTable(
        string practicalId,
        IReadOnlyList<ExpectedColumn> columns,
        IReadOnlyList<string>? vesselLabels = null,
        IReadOnlyDictionary<string, string>? materialNames = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(practicalId);
        ArgumentNullException.ThrowIfNull(columns);
        if (columns.Count == 0 || columns.Select(c => c.Id).Distinct().Count() < columns.Count)
            throw new ArgumentException("At least one column, each with its own id.", nameof(columns));
        PracticalId = practicalId;
        Columns = columns;
        VesselLabels = vesselLabels ?? [];
        MaterialNames = materialNames ?? new Dictionary<string, string>();
    }

    /// <summary>What a practical expects of a class's table.</summary>
    public static ExpectedTable Of(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return PracticalExpectations.Of(practical);
    }

    /// <summary>Id of the practical.</summary>
    public string PracticalId { get; }

    /// <summary>Readings in the practical's order, then ready-made columns.</summary>
    public IReadOnlyList<ExpectedColumn> Columns { get; }

    /// <summary>Labels of the parts that stand on the pan.</summary>
    public IReadOnlyList<string> VesselLabels { get; }

    /// <summary>Formula to name of what is weighed.</summary>
    public IReadOnlyDictionary<string, string> MaterialNames { get; }

    /// <summary>The practical's readings in order.</summary>
    public IEnumerable<ExpectedColumn> Readings => Columns.Where(c => c.IsReading);
}
