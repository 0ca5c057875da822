using System.Globalization;
using System.Text;

namespace Calx.Practicals.Readings;

/// <summary>A heading, or a phrase that a heading may match, taken apart into comparable words.</summary>
internal sealed class HeadingText
{
    /// <summary>Longest heading compared; a longer one is a paragraph, and its comparison would only cost time.</summary>
    public const int LongestHeading = 200;

    private HeadingText(string key, string keyWithoutNumber, string[] words, string[] spelt, int? number, string? unit)
    {
        Key = key;
        KeyWithoutNumber = keyWithoutNumber;
        Words = words;
        Core = [.. words.Where(w => !HeadingWords.IsFiller(w))];
        Spelt = spelt;
        Number = number;
        Unit = unit;
    }

    /// <summary>The words as written, in small letters, without unit and punctuation.</summary>
    public string Key { get; }

    /// <summary>The same without the number of a repeat.</summary>
    public string KeyWithoutNumber { get; }

    /// <summary>The words that say something, in one form each, sorted; the number of a repeat left out.</summary>
    public string[] Words { get; }

    /// <summary>The words without those that stand in most headings (mass, reading).</summary>
    public string[] Core { get; }

    /// <summary>The words of <see cref="Core"/> with their endings, in which slips of the keyboard are looked for.</summary>
    public string[] Spelt { get; }

    /// <summary>The number of a repeat: 2 in 'after 2', 'after2', 'second heating', or null.</summary>
    public int? Number { get; }

    /// <summary>The unit written in the heading, or null.</summary>
    public string? Unit { get; }

    /// <summary>Takes a heading apart.</summary>
    /// <param name="text">The heading as written.</param>
    /// <param name="names">Folded formula to name, so that MgO and magnesium oxide are the same words.</param>
    public static HeadingText Read(string text, IReadOnlyDictionary<string, string[]> names)
    {
        (string rest, string? unit) = HeadingUnit.Split(text.Length > LongestHeading ? text[..LongestHeading] : text);
        List<string> tokens = Tokens(rest, names);
        List<string> words = [];
        List<string> spelt = [];
        List<string> unnumbered = [];
        int? number = null;
        foreach (string token in tokens)
        {
            (string word, int? itsNumber) = Numbered(token, names);
            number ??= itsNumber;
            if (word.Length == 0)
                continue;
            unnumbered.Add(word);
            if (HeadingWords.SaysNothing(word))
                continue;
            string[] meant = names.GetValueOrDefault(word) ?? [HeadingWords.Stem(word)];
            words.AddRange(meant);
            if (!meant.All(HeadingWords.IsFiller))
                spelt.AddRange(names.GetValueOrDefault(word) ?? [word]);
        }
        return new HeadingText(
            string.Join(' ', tokens), string.Join(' ', unnumbered), Sorted(words), Sorted(spelt), number, unit);
    }

    private static string[] Sorted(List<string> words) => [.. words.Distinct().Order(StringComparer.Ordinal)];

    /// <summary>A text in small letters with plain digits and full stops for the dots of a hydrate.</summary>
    public static string Fold(string text)
    {
        StringBuilder folded = new(text.Length);
        foreach (char c in text)
        {
            folded.Append(c switch
            {
                >= '₀' and <= '₉' => (char)('0' + (c - '₀')),
                '²' => '2',
                '³' => '3',
                '·' or '*' or '•' => '.',
                '\u00a0' or '\u202f' or '\u2009' => ' ',
                _ => char.ToLowerInvariant(c),
            });
        }
        return folded.Replace("re-", "re").Replace("%", " percent ").ToString();
    }

    private static List<string> Tokens(string text, IReadOnlyDictionary<string, string[]> names)
    {
        string folded = Fold(text);
        List<string> tokens = [];
        int start = -1;
        for (int i = 0; i <= folded.Length; i++)
        {
            bool inside = i < folded.Length && (char.IsLetterOrDigit(folded[i]) || IsInnerDot(folded, i));
            if (inside && start < 0)
                start = i;
            if (inside || start < 0)
                continue;
            string token = folded[start..i];
            start = -1;
            if (token.Contains('.', StringComparison.Ordinal) && !names.ContainsKey(token))
                tokens.AddRange(token.Split('.'));
            else
                tokens.Add(token);
        }
        return tokens;
    }

    private static bool IsInnerDot(string text, int at) =>
        text[at] == '.' && at > 0 && at + 1 < text.Length
        && char.IsLetterOrDigit(text[at - 1]) && char.IsLetterOrDigit(text[at + 1]);

    // 'after2' is a word and a number; 'm1' and 'h2o' are words, because so short a word is a symbol.
    private static (string Word, int? Number) Numbered(string token, IReadOnlyDictionary<string, string[]> names)
    {
        if (names.ContainsKey(token))
            return (token, null);
        if (HeadingWords.Ordinal(token) is int ordinal)
            return ("", ordinal);
        int letters = token.Length;
        while (letters > 0 && char.IsAsciiDigit(token[letters - 1]))
            letters--;
        bool splits = letters < token.Length && token.Length - letters <= 2 && (letters == 0 || letters >= 3);
        return splits
            ? (token[..letters], int.Parse(token.AsSpan(letters), NumberStyles.None, CultureInfo.InvariantCulture))
            : (token, null);
    }
}
