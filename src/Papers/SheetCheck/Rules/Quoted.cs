namespace Calx.Papers.SheetCheck.Rules;

/// <summary>The part of a text that a finding shows.</summary>
internal static class Quoted
{
    private const int Nearby = 40;
    private const int Longest = 120;

    /// <summary>Some words around a place of a text, on one line.</summary>
    public static string Around(string text, int start, int length)
    {
        int from = Math.Max(0, start - Nearby);
        int to = Math.Min(text.Length, start + length + Nearby);
        // Whole words, where there are blanks to cut at.
        from = from > 0 && text.IndexOf(' ', from, start - from) is >= 0 and int blank ? blank + 1 : from;
        to = to < text.Length && text.LastIndexOf(' ', to, to - start - length + 1) is >= 0 and int last && last > start + length ? last : to;
        return (from > 0 ? "… " : "") + OneLine(text[from..to]) + (to < text.Length ? " …" : "");
    }

    /// <summary>A text from its beginning, cut where it is long.</summary>
    public static string Whole(string text) => text.Length > Longest ? OneLine(text[..Longest]) + " …" : OneLine(text);

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
