using Calx.Measurement.Numbers;

namespace Calx.Chemistry.Equations;

/// <summary>Finds arrows in an equation; the spellings stand in EquationParser.cs.</summary>
internal static class ArrowScan
{
    /// <summary>The first arrow from a place on, or null.</summary>
    public static SourceSpan? Next(string text, int from, out Arrow kind)
    {
        kind = Arrow.Forward;
        for (int i = from; i < text.Length; i++)
        {
            int length = LengthAt(text, i, ref kind);
            if (length > 0)
            {
                // e--> is e- and ->: without its charge e is nothing.
                bool electron = length > 2 && IsHyphen(text[i]) && IsBareElectron(text, from, i);
                return electron ? new SourceSpan(i + 1, length - 1) : new SourceSpan(i, length);
            }

            // What a run of hyphens is not, its rest is not either: each is looked through once.
            while (IsHyphen(text[i]) && i + 1 < text.Length && IsHyphen(text[i + 1]))
            {
                i++;
            }
        }

        return null;
    }

    private static int LengthAt(string text, int i, ref Arrow kind)
    {
        char c = text[i];
        if (c is '→' or '⟶' or '⇒' or '⟹' or '➔')
        {
            return 1;
        }

        if (c is '⇌' or '⇋' or '⇄' or '⇆' or '↔' or '⟷' or '⇔')
        {
            kind = Arrow.Reversible;
            return 1;
        }

        if (c is not ('=' or '<') && !IsHyphen(c))
        {
            return 0;
        }

        int end = i + 1;
        while (end < text.Length && (text[end] == '=' || IsHyphen(text[end])))
        {
            end++;
        }

        bool head = end < text.Length && text[end] == '>';
        if (c == '<')
        {
            kind = head && end > i + 1 ? Arrow.Reversible : kind;
            return head && end > i + 1 ? end + 1 - i : 0;
        }

        return head ? end + 1 - i : c == '=' ? end - i : 0;
    }

    private static bool IsHyphen(char c) => c is '-' or '−' or '–';

    private static bool IsBareElectron(string text, int from, int end)
        => end > from && text[end - 1] == 'e' && (end - 1 == from || !char.IsAsciiLetter(text[end - 2]));
}
