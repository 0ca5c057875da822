using System.Globalization;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Classes;

/// <summary>Names as they are pasted: one a line. What a spreadsheet leaves round them goes; a line that is too long is a fault, not cut.</summary>
/// <param name="Names">The names, in order.</param>
/// <param name="Fault">What is wrong, or null.</param>
public sealed record NamesPasted(IReadOnlyList<string> Names, string? Fault)
{
    /// <summary>Most members of a class.</summary>
    public const int Most = 99;

    /// <summary>Reads them.</summary>
    /// <param name="text">What was pasted.</param>
    /// <param name="already">How many members there are.</param>
    public static NamesPasted Of(string text, int already)
    {
        string[] names = [.. text.Split('\n').Select(Clean).Where(n => n.Length > 0)];
        int tooLong = Array.FindIndex(names, n => n.Length > Member.LongestName);
        string? fault = names.Length == 0 ? "There is no name in it: one a line is expected."
            : already + names.Length > Most ? string.Create(
                CultureInfo.InvariantCulture, $"That makes {already + names.Length} members; a class has at most {Most}. Nothing was added.")
            : tooLong >= 0 ? string.Create(
                CultureInfo.InvariantCulture, $"Line {tooLong + 1}, '{names[tooLong][..Member.LongestName]}...', is longer than {Member.LongestName} characters: no more is needed than you need to call them by. Nothing was added.")
            : null;
        return new NamesPasted(fault is null ? names : [], fault);
    }

    /// <summary>One name: runs of blanks as one, no control characters.</summary>
    public static string Clean(string line) =>
        string.Join(' ', new string([.. line.Select(c => char.IsControl(c) ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
