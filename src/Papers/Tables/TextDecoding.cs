using System.Text;

namespace Calx.Papers.Tables;

/// <summary>Decides in which encoding a text file was written.</summary>
internal static class TextDecoding
{
    private static readonly UTF8Encoding StrictUtf8 = new(false, true);

    /// <summary>The text and the name of its encoding, or null where the bytes are no text.</summary>
    public static (string Text, string Encoding)? Decode(byte[] bytes)
    {
        (Encoding Encoding, int Skip)? marked = Marked(bytes);
        string text;
        string name;
        if (marked is { } mark)
            (text, name) = (mark.Encoding.GetString(bytes, mark.Skip, bytes.Length - mark.Skip), mark.Encoding.WebName);
        else if (Utf16WithoutMark(bytes) is Encoding utf16)
            (text, name) = (utf16.GetString(bytes), utf16.WebName);
        else
            (text, name) = Utf8OrWindows(bytes);
        return IsText(text) ? (text, name) : null;
    }

    private static (Encoding, int)? Marked(byte[] bytes) => bytes switch
    {
        [0xEF, 0xBB, 0xBF, ..] => (new UTF8Encoding(false), 3),
        [0xFF, 0xFE, 0, 0, ..] => (new UTF32Encoding(false, false), 4),
        [0xFF, 0xFE, ..] => (new UnicodeEncoding(false, false), 2),
        [0xFE, 0xFF, ..] => (new UnicodeEncoding(true, false), 2),
        _ => null,
    };

    // Latin text in UTF-16 has a zero in nearly every second byte; no other text has any.
    private static UnicodeEncoding? Utf16WithoutMark(byte[] bytes)
    {
        int looked = Math.Min(bytes.Length, 4_096) & ~1;
        int evenZeros = 0;
        int oddZeros = 0;
        for (int i = 0; i < looked; i += 2)
        {
            evenZeros += bytes[i] == 0 ? 1 : 0;
            oddZeros += bytes[i + 1] == 0 ? 1 : 0;
        }
        int most = looked * 2 / 5;
        if (looked >= 4 && oddZeros > most && evenZeros == 0)
            return new UnicodeEncoding(false, false);
        return looked >= 4 && evenZeros > most && oddZeros == 0 ? new UnicodeEncoding(true, false) : null;
    }

    private static (string, string) Utf8OrWindows(byte[] bytes)
    {
        try
        {
            return (StrictUtf8.GetString(bytes), "utf-8");
        }
        catch (DecoderFallbackException)
        {
            Encoding windows = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;
            return (windows.GetString(bytes), "windows-1252");
        }
    }

    // A text has no control characters but tabs and line ends; one in a thousand is let pass as dirt.
    private static bool IsText(string text)
    {
        int controls = 0;
        foreach (char c in text)
        {
            if (c == '\0')
                return false;
            controls += char.IsControl(c) && c is not ('\t' or '\r' or '\n' or '\f' or '\u001a' or '\u0085') ? 1 : 0;
        }
        return controls <= text.Length / 1_000;
    }
}
