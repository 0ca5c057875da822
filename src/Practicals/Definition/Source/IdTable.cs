namespace Calx.Practicals.Definition.Source;

/// <summary>The ids that one list of a practical declares.</summary>
/// <param name="kind">What they are ids of: material, reading, ...</param>
internal sealed class IdTable(string kind)
{
    private readonly Dictionary<string, FilePosition> declared = new(StringComparer.Ordinal);
    private readonly List<string> inOrder = [];

    /// <summary>What they are ids of.</summary>
    public string Kind { get; } = kind;

    /// <summary>All ids, in the order of the file.</summary>
    public IReadOnlyList<string> All => inOrder;

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
