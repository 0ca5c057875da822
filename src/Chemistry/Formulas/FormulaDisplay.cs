using System.Text;
using Calx.Measurement.Numbers;

namespace Calx.Chemistry.Formulas;

/// <summary>
/// Shows the plain form of a formula. In it a digit behind a letter or a closing bracket counts atoms, a digit behind
/// the dot multiplies a part, and what follows ^ up to the state is the charge.
/// </summary>
internal static class FormulaDisplay
{
    private const char Minus = '−';

    public static IReadOnlyList<FormulaPiece> Pieces(string text)
    {
        var pieces = new List<FormulaPiece>();
        int start = 0;
        FormulaLine line = FormulaLine.Base;
        for (int i = 0; i <= text.Length; i++)
        {
            FormulaLine next = i == text.Length ? line : LineOf(text, i, line);
            if ((next != line || i == text.Length) && i > start)
            {
                string run = text[start..i].Replace("^", "", StringComparison.Ordinal);
                pieces.Add(new FormulaPiece(line == FormulaLine.Superscript ? run.Replace('-', Minus) : run, line));
                start = i;
            }

            line = next;
        }

        return pieces;
    }

    public static string Unicode(string text)
    {
        var shown = new StringBuilder(text.Length);
        foreach (FormulaPiece piece in Pieces(text))
        {
            foreach (char c in piece.Text)
            {
                shown.Append(piece.Line switch
                {
                    FormulaLine.Subscript => (char)('₀' + c - '0'),
                    FormulaLine.Superscript when c == '+' => '⁺',
                    FormulaLine.Superscript when c == Minus => '⁻',
                    FormulaLine.Superscript => FormulaCharacters.Superscript(c),
                    _ => c,
                });
            }
        }

        return shown.ToString();
    }

    public static string Html(string text)
    {
        var shown = new StringBuilder();
        foreach (FormulaPiece piece in Pieces(text))
        {
            shown.Append(piece.Line switch
            {
                FormulaLine.Subscript => $"<sub>{piece.Text}</sub>",
                FormulaLine.Superscript => $"<sup>{piece.Text}</sup>",
                _ => piece.Text,
            });
        }

        return shown.ToString();
    }

    /// <summary>Where a symbol first stands in a plain form; the whole where it does not.</summary>
    public static SourceSpan SpanOf(string text, string symbol)
    {
        for (int at = text.IndexOf(symbol, StringComparison.Ordinal);
            at >= 0;
            at = text.IndexOf(symbol, at + 1, StringComparison.Ordinal))
        {
            int end = at + symbol.Length;
            if (end == text.Length || !char.IsAsciiLetterLower(text[end]))
            {
                return new SourceSpan(at, symbol.Length);
            }
        }

        return new SourceSpan(0, text.Length);
    }

    private static FormulaLine LineOf(string text, int i, FormulaLine before)
    {
        char c = text[i];
        if (c == '^' || (before == FormulaLine.Superscript && c != '('))
        {
            return FormulaLine.Superscript;
        }

        bool counts = char.IsAsciiDigit(c) && i > 0
            && (before == FormulaLine.Subscript || char.IsAsciiLetter(text[i - 1]) || FormulaCharacters.Closes(text[i - 1]));
        return counts ? FormulaLine.Subscript : FormulaLine.Base;
    }
}
