namespace Calx.Papers.SheetCheck;

/// <summary>Raised digits and signs as characters of their own, so that the charge of Mg²⁺ is not taken for a number of atoms.</summary>
internal static class RaisedText
{
    private const string Plain = "0123456789+-−–";
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁻⁻";

    public static string Of(string text) => string.Concat(text.Select(c => Plain.IndexOf(c, StringComparison.Ordinal) is >= 0 and int at ? Raised[at] : c));
}
