namespace Calx.Chemistry.Formulas;

/// <summary>What single characters mean in a formula, in plain text and in Unicode.</summary>
internal static class FormulaCharacters
{
    public const char HydrateDot = '·';

    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>A dot before water of crystallisation: the middle dot, its look-alikes, or what keyboards have.</summary>
    public static bool IsHydrateDot(char c)
        => c is '.' or HydrateDot or '*' or '\u2022' or '\u22C5' or '\u2219' or '\u30FB' or '\u2027' or '\u00D7';

    /// <summary>Value of a plain or subscript digit, or -1.</summary>
    public static int Digit(char c)
        => char.IsAsciiDigit(c) ? c - '0' : c is >= '₀' and <= '₉' ? c - '₀' : -1;

    /// <summary>Value of a superscript digit, or -1.</summary>
    public static int SuperscriptDigit(char c) => c < '\u00B2' ? -1 : Superscripts.IndexOf(c, StringComparison.Ordinal);

    /// <summary>The superscript of a plain digit.</summary>
    public static char Superscript(char digit) => Superscripts[digit - '0'];

    /// <summary>+1 or -1 for a sign of charge, raised or not, the typographic minus and hyphens included; else 0.</summary>
    public static int Sign(char c) => c switch
    {
        '+' or '⁺' => 1,
        '-' or '⁻' or '−' or '–' or '\u2010' or '\u2011' => -1,
        _ => 0,
    };

    /// <summary>The bracket that closes one that opens, or '\0'.</summary>
    public static char Closing(char open) => open switch
    {
        '(' => ')',
        '[' => ']',
        '{' => '}',
        _ => '\0',
    };

    /// <summary>Whether the character closes a bracket.</summary>
    public static bool Closes(char c) => c is ')' or ']' or '}';

    /// <summary>The state that starts at an opening bracket, and how many characters it takes.</summary>
    public static MatterState StateAt(ReadOnlySpan<char> text, out int length)
    {
        if (text.Length >= 4 && text[0] == '(' && text[1] == 'a' && text[2] == 'q' && text[3] == ')')
        {
            length = 4;
            return MatterState.Aqueous;
        }

        length = 3;
        return text.Length < 3 || text[0] != '(' || text[2] != ')'
            ? MatterState.NotSaid
            : text[1] switch
            {
                's' => MatterState.Solid,
                'l' => MatterState.Liquid,
                'g' => MatterState.Gas,
                _ => MatterState.NotSaid,
            };
    }

    /// <summary>A state as it is written, or nothing.</summary>
    public static string Written(MatterState state) => state switch
    {
        MatterState.Solid => "(s)",
        MatterState.Liquid => "(l)",
        MatterState.Gas => "(g)",
        MatterState.Aqueous => "(aq)",
        _ => "",
    };
}
