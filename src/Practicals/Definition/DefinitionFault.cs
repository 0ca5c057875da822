using System.Globalization;

namespace Calx.Practicals.Definition;

/// <summary>Something wrong in a practical's file.</summary>
public sealed class DefinitionFault(string file, FilePosition at, string reason)
{
    /// <summary>The file's name as given.</summary>
    public string File { get; } = file;

    /// <summary>Line, from 1.</summary>
    public int Line { get; } = Math.Max(1, at.Line);

    /// <summary>Character in that line, from 1.</summary>
    public int Column { get; } = Math.Max(1, at.Column);

    /// <summary>What is wrong and what was expected, without a full stop.</summary>
    public string Reason { get; } = reason;

    /// <summary><c>file:line:column: reason</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}: {Reason}");
}
