namespace Calx.Practicals.Definition.Source;

/// <summary>The ids that one list of a practical declares.</summary>
/// <param name="kind">What they are ids of: material, reading, ...</param>
/// <param name="isNeeded">Whether every practical has some: where there is none, its list is missing, which is told once.</param>
internal sealed class IdTable(string kind, bool isNeeded = false)
{
    private readonly Dictionary<string, FilePosition> declared = new(StringComparer.Ordinal);
    private readonly List<string> inOrder = [];

    /// <summary>What they are ids of.</summary>
    public string Kind { get; } = kind;

    /// <summary>All ids, in the order of the file.</summary>
    public IReadOnlyList<string> All => inOrder;

    /// <summary>Whether its whole list is missing, so that nothing is said of single ids.</summary>
    public bool IsMissing => isNeeded && inOrder.Count == 0;

    /// <summary>What is declared further down, in a list whose entries may use those above them; null for other lists.</summary>
    public EntryOrder? Order { get; set; }

    /// <summary>Why an id that is declared further down cannot be used in the entry on a line, or null where there is none.</summary>
    public string? WhyNotYet(string id, int line) => Order?.WhyNotYet(Kind, id, line);

    /// <summary>Whether an id has been declared.</summary>
    public bool Has(string id) => declared.ContainsKey(id);

    /// <summary>Declares an id; false where it is there already.</summary>
    public bool Declare(string id, FilePosition at)
    {
        bool isNew = declared.TryAdd(id, at);
        if (isNew)
        {
            inOrder.Add(id);
        }

        return isNew;
    }

    /// <summary>The line on which an id was declared.</summary>
    public int LineOf(string id) => declared[id].Line;

    /// <summary>Why an id that is not here is a fault, with what it may have meant.</summary>
    public string Unknown(string id) => $"there is no {Kind} '{id}'; {NearestWord.Choice(id, All)}";
}
