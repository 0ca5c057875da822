using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>The words of the grammar: function names, what may be a name, what may stand in M( ).</summary>
internal static class ExpressionNames
{
    private static readonly string[] FunctionNames = ["ln", "log10", "exp", "sqrt", "abs", "min", "max"];

    public static string All => string.Join(", ", FunctionNames);

    public static string Of(Function function) => FunctionNames[(int)function];

    public static Function? Find(string name)
    {
        int place = Array.IndexOf(FunctionNames, name);
        return place < 0 ? null : (Function)place;
    }

    public static bool Takes(Function function, int arguments)
        => function is Function.Min or Function.Max ? arguments >= 2 : arguments == 1;

    public static bool StartsName(char c) => char.IsLetter(c) || c == '_';

    public static bool GoesOnInName(char c) => char.IsLetterOrDigit(c) || c == '_';

    public static bool IsName(string? text)
        => !string.IsNullOrEmpty(text) && StartsName(text[0]) && text.All(GoesOnInName) && Find(text) is null;

    public static bool IsFormulaText(string? text)
    {
        if (string.IsNullOrWhiteSpace(text) || char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]))
        {
            return false;
        }

        int open = 0;
        foreach (char c in text)
        {
            open += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (open < 0)
            {
                return false;
            }
        }

        return open == 0;
    }

    /// <summary>What was probably meant by the name of a function that there is not; null where nothing is near.</summary>
    public static string? Nearest(string name) => name.ToUpperInvariant() switch
    {
        "LOG" => "log10 or ln",
        "LG" => "log10",
        "LOGE" => "ln",
        "SQR" or "ROOT" => "sqrt",
        "MINIMUM" => "min",
        "MAXIMUM" => "max",
        "ABSOLUTE" or "MOD" => "abs",
        "M" or "MR" or "MOLARMASS" => "M",
        _ => Array.Find(FunctionNames, known => Slips.Between(known, name) <= 1),
    };
}
