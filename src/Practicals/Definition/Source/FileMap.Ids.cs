using System.Text.RegularExpressions;

namespace Calx.Practicals.Definition.Source;

/// <content>Ids: where they are declared, and where they are used.</content>
internal sealed partial class FileMap
{
    /// <summary>The id of this entry, declared in a table.</summary>
    /// <param name="key">The key that holds it.</param>
    /// <param name="table">Where it is declared.</param>
    /// <param name="inFormulas">Whether formulas use it, so that it has to be a name there.</param>
    public string Id(string key, IdTable table, bool inFormulas = false)
    {
        ScalarNode? id = Need(key, $"the id of this {table.Kind}") is FileNode value ? TextOf(value) : null;
        if (id is null)
        {
            return "?";
        }

        if (!(inFormulas ? FormulaName() : DashedName()).IsMatch(id.Text))
        {
            faults.Add(id.At, $"'{Short(id.Text)}' cannot be an id; expected {(inFormulas ? FormulaNameWords : DashedNameWords)}");
        }
        else if (inFormulas && Reserved.Contains(id.Text))
        {
            faults.Add(id.At, $"'{id.Text}' cannot be an id, because formulas use it for a function");
        }
        else if (!table.Declare(id.Text, id.At))
        {
            faults.Add(id.At, $"the {table.Kind} '{id.Text}' is there already, on line {table.LineOf(id.Text)}");
        }

        return id.Text;
    }

    /// <summary>An id used under a key that must be there.</summary>
    public string Reference(string key, IdTable table) =>
        Need(key, $"the id of a {table.Kind}") is FileNode value ? ReferenceOf(value, table) ?? "?" : "?";

    /// <summary>An id used under a key that may be missing.</summary>
    public string? OptionalReference(string key, IdTable table) =>
        Find(key) is FileNode value ? ReferenceOf(value, table) : null;

    /// <summary>Ids used in a list under a key that may be missing.</summary>
    public IReadOnlyList<string> References(string key, IdTable table) =>
        [.. Items(Find(key), $"the id of a {table.Kind}").Select(item => ReferenceOf(item, table)).OfType<string>()];

    /// <summary>The id in a node, or null where it is unknown, which is noted.</summary>
    public string? ReferenceOf(FileNode value, IdTable table)
    {
        ScalarNode? id = TextOf(value);
        if (id is not null && !table.Has(id.Text))
        {
            if (!table.IsMissing)
            {
                faults.Add(id.At, table.Unknown(Short(id.Text)));
            }

            return null;
        }

        return id?.Text;
    }

    private const string FormulaNameWords = "a letter, then letters only, such as massOxygen";
    private const string DashedNameWords = "small letters, digits and dashes, such as not-dry, or a name such as massOxygen";

    /// <summary>Words that a formula reads as functions or as the molar mass.</summary>
    private static readonly HashSet<string> Reserved =
        new(["ln", "log10", "exp", "sqrt", "abs", "min", "max", "M"], StringComparer.Ordinal);

    // No digits: the second weighing of 'after' is 'after2' wherever readings are kept.
    [GeneratedRegex(@"^[a-zA-Z]{1,40}\z")]
    private static partial Regex FormulaName();

    [GeneratedRegex(@"^[a-zA-Z][a-zA-Z0-9-]{0,60}\z")]
    private static partial Regex DashedName();
}
