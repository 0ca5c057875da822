using System.Globalization;
using System.Text;
using Calx.Chemistry.Formulas;

namespace Calx.Chemistry.Equations;

/// <summary>Writes an equation with given coefficients.</summary>
internal static class EquationText
{
    public static string Plain(Equation equation, IReadOnlyList<long> coefficients)
        => Write(equation, coefficients, equation.Arrow == Arrow.Forward ? " -> " : " <=> ", formula => formula.ToString());

    public static string Unicode(Equation equation, IReadOnlyList<long> coefficients)
        => Write(equation, coefficients, equation.Arrow == Arrow.Forward ? " → " : " ⇌ ", formula => formula.ToUnicode());

    public static string Html(Equation equation, IReadOnlyList<long> coefficients)
        => Write(equation, coefficients, equation.Arrow == Arrow.Forward ? " → " : " ⇌ ", formula => formula.ToHtml());

    private static string Write(
        Equation equation, IReadOnlyList<long> coefficients, string arrow, Func<Formula, string> show)
    {
        ArgumentNullException.ThrowIfNull(coefficients);
        ReadOnlySpan<Term> terms = equation.Terms;
        if (coefficients.Count != terms.Length)
        {
            throw new ArgumentException(
                $"There are {coefficients.Count} coefficients for {terms.Length} species.", nameof(coefficients));
        }

        var text = new StringBuilder(96);
        bool first = true;
        for (int i = 0; i < terms.Length; i++)
        {
            if (i == equation.LeftCount)
            {
                text.Append(arrow);
                first = true;
            }

            if (coefficients[i] == 0)
            {
                continue;
            }

            text.Append(first ? "" : " + ");
            first = false;
            if (coefficients[i] != 1)
            {
                text.Append(CultureInfo.InvariantCulture, $"{coefficients[i]}");
            }

            text.Append(show(terms[i].Formula));
        }

        return text.ToString();
    }
}
