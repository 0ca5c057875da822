using System.Globalization;
using System.Text.RegularExpressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>
/// The one way to write a number: an optional minus, digits, a full stop with digits, an exponent. YAML's octal,
/// hexadecimal, underscores and .inf are not read, because 010 would become 8 without a word.
/// </summary>
internal static partial class FileNumber
{
    /// <summary>Whether a plain scalar means a number.</summary>
    public static bool Is(ScalarNode node) => node.Plain && Written().IsMatch(node.Text);

    /// <summary>The number, or why the node is none.</summary>
    public static double? Read(ScalarNode node, out string reason)
    {
        reason = Why(node);
        if (!Is(node))
        {
            return null;
        }

        double value = double.Parse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture);
        reason = $"{node.Text} is larger than any number that can be computed with";
        return double.IsFinite(value) ? value : null;
    }

    private static string Why(ScalarNode node) => node switch
    {
        { IsNothing: true } => "nothing stands here",
        { Plain: false } => $"'{node.Text}' stands in quotes and so is a text; leave them off",
        _ when LeadingZero().IsMatch(node.Text) => $"'{node.Text}' starts with a zero; leave it off",
        _ when DecimalComma().IsMatch(node.Text) => $"'{node.Text}' has a decimal comma; write a full stop",
        _ => $"'{node.Text}' is no number",
    };

    [GeneratedRegex(@"^-?(0|[1-9][0-9]{0,40})(\.[0-9]{1,40})?([eE][+-]?[0-9]{1,4})?\z")]
    private static partial Regex Written();

    [GeneratedRegex(@"^[+-]?0[0-9]+(\.[0-9]*)?\z")]
    private static partial Regex LeadingZero();

    [GeneratedRegex(@"^-?[0-9]+,[0-9]+\z")]
    private static partial Regex DecimalComma();
}
