using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;

namespace Calx.Chemistry.Equations;

/// <summary>
/// Reads an equation in time in proportion to its length. Grammar, blanks allowed between all parts:
/// <code>
/// equation := side arrow side
/// side     := term ('+' term)*
/// term     := digit* formula                 the digits are the coefficient; for formula see FormulaParser.cs
/// arrow    := '-'+ '>' | '='+ '>'? | '→' and look-alikes | '&lt;' ('-' | '=')+ '>' | '⇌' and look-alikes
/// </code>
/// A run of plus signs may be charge, separator or both. It is all charge where it touches a species and nothing,
/// another plus or a state follows (Na+ + Cl-, Na+(aq)), or where a charge was begun and lacks its sign (Fe^3+). In all
/// other cases its last plus separates and the rest is charge: Mg+O2, Na++Cl-. Arrows go before charges: in Cl->AgCl
/// the minus is the arrow's; only behind a bare e, which is nothing without its charge, one minus is taken for it.
/// </summary>
internal static class EquationParser
{
    public static Parsed<Equation> Read(string text)
    {
        if (text.Length > EquationLimits.Characters)
        {
            return new TextFault(new SourceSpan(0, text.Length), EquationFaults.TooLong);
        }

        SourceSpan? arrow = ArrowScan.Next(text, 0, out Arrow kind);
        if (arrow is not { } found)
        {
            bool empty = string.IsNullOrWhiteSpace(text);
            return new TextFault(new SourceSpan(0, text.Length), empty ? EquationFaults.Empty : EquationFaults.NoArrow);
        }

        if (ArrowScan.Next(text, found.End, out _) is { } second)
        {
            return new TextFault(second, EquationFaults.SecondArrow);
        }

        var terms = new List<Term>(8);
        TextFault? fault = ReadSide(text, 0, found.Start, terms);
        int left = terms.Count;
        fault ??= ReadSide(text, found.End, text.Length, terms);
        return fault ?? Checked(text, terms, left, kind);
    }

    private static Parsed<Equation> Checked(string text, List<Term> terms, int left, Arrow kind)
    {
        var whole = new SourceSpan(0, text.Length);
        if (terms.Count > EquationLimits.Species)
        {
            return new TextFault(whole, EquationFaults.TooManySpecies);
        }

        var equation = new Equation([.. terms], left, kind);
        return ConservedAmounts.CountElements(equation) > EquationLimits.Elements
            ? new TextFault(whole, EquationFaults.TooManyElements)
            : equation;
    }

    private static TextFault? ReadSide(string text, int start, int end, List<Term> terms)
    {
        int termStart = start;
        int i = start;
        while (i < end)
        {
            if (text[i] != '+')
            {
                i++;
                continue;
            }

            int run = i;
            while (i < end && text[i] == '+')
            {
                i++;
            }

            if (IsAllCharge(text, termStart, run, i, end))
            {
                continue;
            }

            if (ReadTerm(text, termStart, i - 1, terms) is { } fault)
            {
                return fault;
            }

            termStart = i;
        }

        return ReadTerm(text, termStart, end, terms);
    }

    private static bool IsAllCharge(string text, int termStart, int run, int runEnd, int end)
    {
        if (run == termStart || char.IsWhiteSpace(text[run - 1]))
        {
            return false;
        }

        int next = runEnd;
        while (next < end && char.IsWhiteSpace(text[next]))
        {
            next++;
        }

        return next == end
            || text[next] == '+'
            || FormulaCharacters.StateAt(text.AsSpan(next, end - next), out _) != MatterState.NotSaid
            || (runEnd - run == 1 && LacksSign(text.AsSpan(termStart, run - termStart)));
    }

    // Fe^3  Fe^{3  Fe³  Na^
    private static bool LacksSign(ReadOnlySpan<char> before)
    {
        if (FormulaCharacters.SuperscriptDigit(before[^1]) >= 0)
        {
            return true;
        }

        ReadOnlySpan<char> mark = before.TrimEnd("0123456789");
        mark = mark.Length > 1 && mark[^1] == '{' ? mark[..^1] : mark;
        return mark.Length > 0 && mark[^1] == '^';
    }

    private static TextFault? ReadTerm(string text, int start, int end, List<Term> terms)
    {
        while (start < end && char.IsWhiteSpace(text[start]))
        {
            start++;
        }

        int digits = start;
        while (digits < end && char.IsAsciiDigit(text[digits]))
        {
            digits++;
        }

        if (CoefficientFault(text, start, digits, end) is { } fault)
        {
            return fault;
        }

        long? coefficient = digits > start
            ? long.Parse(text.AsSpan(start, digits - start), System.Globalization.CultureInfo.InvariantCulture)
            : null;
        Parsed<Formula> formula = FormulaParser.Read(text.AsSpan(digits, end - digits).TrimEnd(), null, digits);
        if (!formula.Succeeded)
        {
            return formula.Fault;
        }

        terms.Add(new Term(coefficient, formula.Value));
        return null;
    }

    private static TextFault? CoefficientFault(string text, int start, int digits, int end)
    {
        bool broken = digits < end && (text[digits] is '½' or '¼' or '¾' or '⅓' or '⅔'
            || (digits > start && text[digits] is '/' or '.' or ','));
        string? reason = broken ? EquationFaults.WholeCoefficients
            : digits - start > EquationLimits.CoefficientDigits ? EquationFaults.LongCoefficient
            : digits > start && text[start] == '0' ? EquationFaults.ZeroCoefficient
            : null;
        return reason is null ? null : new TextFault(new SourceSpan(start, Math.Max(1, digits - start)), reason);
    }
}
