using System.Globalization;

namespace Calx.Practicals.Definition;

/// <summary>Where something stands in a practical's file. <c>default</c> stands for the file as a whole.</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Character in that line, from 1.</param>
public readonly record struct FilePosition(int Line, int Column)
{
    /// <summary><c>line:column</c>; the whole file is at its first character.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, Line)}:{Math.Max(1, Column)}");
}
