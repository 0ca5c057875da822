using System.Text.RegularExpressions;
using Calx.Chemistry.Equations;
using Calx.Papers.Texts;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>Equations in symbols that do not balance as they stand. Word equations, equations with blanks, and those that students are told to
/// balance are passed over.</summary>
internal static partial class EquationRule
{
    public static IEnumerable<SheetFinding> Of(CheckedSheet it)
    {
        string before = "";
        foreach (SheetParagraph paragraph in it.Sheet.Paragraphs)
        {
            string text = paragraph.Text;
            bool isTask = Task().IsMatch(text) || (Task().IsMatch(before) && !paragraph.IsHeading);
            before = text;
            foreach (Match match in isTask ? [] : Written().Matches(text).Where(m => StandsAlone(text, m)))
            {
                if (Equation.Parse(match.Value.TrimEnd('.', ' ')) is { Succeeded: true, Value: Equation equation }
                    && (equation.Reactants.Count + equation.Products.Count > 2 || match.Value.IndexOf('=', StringComparison.Ordinal) < 0)
                    && equation.CheckAsWritten() is WrittenCheck.NotBalanced wrong)
                {
                    yield return new SheetFinding(
                        "equation", paragraph.Place.At(match.Index, it.Language), Quoted.Whole(match.Value), it.Texts.Unbalanced(string.Join("; ", wrong.Imbalances)), Expected(equation, it.Texts));
                }
            }
        }
    }

    private static string Expected(Equation equation, SheetCheckTexts texts) => equation.Balance() switch
    {
        BalancingResult.Balanced balanced => equation.ToUnicode(balanced.Coefficients),
        BalancingResult.CannotBalance none => texts.OtherFormulas(none.Reason),
        _ => texts.AgreeingNumbers,
    };

    // A blank, a fraction or a word on either side: what was found is only a part of what is written.
    private static bool StandsAlone(string text, Match match)
    {
        string left = text[..match.Index].TrimEnd(' ', '\u00a0');
        string right = text[(match.Index + match.Length)..].TrimStart(' ', '\u00a0');
        bool touches = match.Index > 0 && (char.IsLetterOrDigit(text[match.Index - 1]) || text[match.Index - 1] is '(' or ')' or '.' or '/');
        return !touches && !(left.Length > 0 && left[^1] is '+' or '½' or '¼' or '¾' or '/' or '_' or '…' or '□') && !(right.Length > 0 && right[0] is '+' or '_' or '…' or '(' or '□');
    }

    [GeneratedRegex(@"(?i)\bbalanc(e|ing)\b[^.?!]{0,200}\b(equations?|it|this|these)\b|\bunbalanced\b|\bcomplete\b[^.?!]{0,200}\bequation", RegexOptions.CultureInvariant)]
    private static partial Regex Task();

    // Every repetition has an end, so that a text made to be slow costs no more than another.
    private const string Term = @"(\d+\s?)?[A-Z\[][A-Za-z0-9\[\]·.₀₁₂₃₄₅₆₇₈₉⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻^{}]{0,40}(\([A-Z][A-Za-z0-9₀₁₂₃₄₅₆₇₈₉]{0,20}\)[A-Za-z0-9₀₁₂₃₄₅₆₇₈₉]{0,20}){0,4}(\s?\((s|l|g|aq)\))?";

    private const string Side = Term + @"(\s{0,3}\+\s{0,3}" + Term + "){0,10}";

    [GeneratedRegex(Side + @"\s{0,3}(→|⟶|⇒|⟹|➔|⇌|⇄|-{1,3}>|−>|–>|={1,3}>|<=>|=)\s{0,3}" + Side, RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
