using Calx.Measurement.Numbers;

namespace Calx.Practicals.Definition.Source;

/// <summary>The known word that a mistyped one probably means.</summary>
internal static class NearestWord
{
    private const int MostTold = 30;

    /// <summary>The likely word alone where there is one: nobody reads through a long list beside it.</summary>
    public static string Likely(string word, IReadOnlyList<string> known) =>
        Slips.Nearest(word, [.. known]) is string near ? $"did you mean {near}?" : Choice(word, known);

    /// <summary>The words a person may choose from, the nearest one last as a suggestion.</summary>
    public static string Choice(string word, IEnumerable<string> known)
    {
        string[] all = [.. known];
        string? near = Slips.Nearest(word, all);
        string more = all.Length > MostTold ? ", ..." : "";
        string expected = all.Length == 0
            ? "there is none to choose from"
            : $"expected {string.Join(", ", all.Take(MostTold))}{more}";
        return near is null ? expected : $"{expected}; did you mean {near}?";
    }
}
