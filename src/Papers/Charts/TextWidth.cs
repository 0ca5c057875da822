using System.Globalization;
using System.Text;

namespace Calx.Papers.Charts;

/// <summary>How wide text is in the font of charts, so that labels can be kept apart and cut where they do not fit.</summary>
internal static class TextWidth
{
    /// <summary>Size of a label in a chart's own units, as in <see cref="ChartStyle.Roles"/>.</summary>
    public const double LabelSize = 15;

    /// <summary>Beyond the table: wider than almost every accented letter of the font (0.58 to 0.81 em).</summary>
    private const int OtherLetter = 700;

    /// <summary>Letters of Chinese, Japanese and Korean fill a square.</summary>
    private const int SquareLetter = 1000;

    private const int FirstSquare = 0x2E80;

    /// <summary>Advance of U+0020 to U+007E in thousandths of an em: the wider of regular and bold, from the font's table
    /// <c>hmtx</c>; figures of equal width.</summary>
    private static readonly short[] Advances =
    [
        256, 281, 396, 580, 580, 820, 724, 212, 274, 274, 425, 580, 234, 373, 238, 466,
        580, 580, 580, 580, 580, 580, 580, 580, 580, 580, 258, 270, 580, 580, 580, 460,
        844, 694, 658, 668, 760, 578, 566, 730, 770, 296, 430, 686, 520, 945, 770, 808,
        619, 808, 643, 548, 600, 742, 694, 1051, 670, 648, 606, 314, 466, 314, 580, 466,
        400, 508, 568, 482, 568, 534, 358, 528, 564, 254, 254, 534, 248, 838, 564, 574,
        568, 568, 373, 440, 372, 564, 528, 802, 522, 528, 460, 306, 261, 306, 580,
    ];

    /// <summary>Width at a size, in the same unit; no kerning, so rather too wide than too narrow.</summary>
    public static double Of(string text, double size = LabelSize)
    {
        long thousandths = 0;
        foreach (Rune letter in text.EnumerateRunes())
        {
            thousandths += Advance(letter.Value);
        }

        return thousandths * size / 1000;
    }

    /// <summary>The text, or its beginning with an ellipsis where it is wider than <paramref name="most"/>. Letters of
    /// several signs are not cut in two.</summary>
    public static string Cut(string text, double most, double size = LabelSize)
    {
        if (Of(text, size) <= most)
        {
            return text;
        }

        var kept = new StringBuilder();
        TextElementEnumerator letters = StringInfo.GetTextElementEnumerator(text);
        double left = most - Of("…", size);
        while (letters.MoveNext() && (left -= Of(letters.GetTextElement(), size)) >= 0)
        {
            kept.Append(letters.GetTextElement());
        }

        return kept.Append('…').ToString();
    }

    /// <summary>The text broken between words into lines no wider than <paramref name="most"/>; what is more than
    /// <paramref name="lines"/> is cut.</summary>
    public static IReadOnlyList<string> Broken(string text, double most, int lines, double size = LabelSize)
    {
        var done = new List<string>();
        string line = string.Empty;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            bool last = done.Count == lines - 1;
            if (last || line.Length == 0 || Of(longer, size) <= most)
            {
                line = longer;
                continue;
            }

            done.Add(Cut(line, most, size));
            line = word;
        }

        return [.. done, Cut(line, most, size)];
    }

    private static int Advance(int letter) =>
        letter >= FirstSquare ? SquareLetter
        : letter is >= ' ' and <= '~' ? Advances[letter - ' ']
        : OtherLetter;
}
