namespace Calx.Chemistry.Formulas;

// Which fault it is where nothing more can be read.
internal ref partial struct FormulaParser
{
    // Where a unit was expected.
    private bool NoUnit()
    {
        bool afterDot = plainLength > 0;
        if (position == text.Length)
        {
            return Fail(position, 0, afterDot ? FormulaFaults.NothingAfterDot : FormulaFaults.Empty);
        }

        char c = text[position];
        return FormulaCharacters.SuperscriptDigit(c) >= 0 ? Isotope()
            : FormulaCharacters.Digit(c) >= 0 && !afterDot ? Coefficient()
            : FormulaCharacters.Closes(c) ? Fail(position, 1, FormulaFaults.NothingToClose)
            : char.IsAsciiLetterLower(c) ? Fail(position, 1, FormulaFaults.SmallLetter)
            : Fail(position, 1, afterDot ? FormulaFaults.NothingAfterDot : FormulaFaults.Unexpected(c));
    }

    // Behind all that could be read.
    private bool Trailing()
    {
        char c = text[position];
        if (FormulaCharacters.Closes(c))
        {
            return Fail(position, 1, FormulaFaults.NothingToClose);
        }

        if (char.IsAsciiLetterLower(c))
        {
            return Fail(position, 1, FormulaFaults.SmallLetter);
        }

        bool sign = c == '^' || FormulaCharacters.Sign(c) != 0;
        bool blankBefore = position > 0 && char.IsWhiteSpace(text[position - 1]);
        return sign && state != MatterState.NotSaid ? Fail(position, 1, FormulaFaults.ChargeThenState)
            : blankBefore ? Fail(position, 1, FormulaFaults.InnerSpace, WithDot(position, position))
            : FormulaCharacters.SuperscriptDigit(c) >= 0 ? Fail(position, 1, FormulaFaults.ChargeSign)
            : Fail(position, 1, FormulaFaults.Unexpected(c), WithDot(position, position + 1));
    }

    // 'CuSO4 5H2O', 'CuSO4,5H2O', 'CuSO4:5H2O': what a dot would make of it, where it can be read and water is counted.
    private readonly string? WithDot(int end, int next)
    {
        if (next >= text.Length || !char.IsAsciiDigit(text[next]) || text[..end].Contains(FormulaCharacters.HydrateDot))
        {
            return null;
        }

        return IfRead($"{text[..end].Trim()}{FormulaCharacters.HydrateDot}{text[next..]}");
    }

    private bool NotClosed(OpenBracket bracket)
    {
        if (position < text.Length)
        {
            char c = text[position];
            if (FormulaCharacters.IsHydrateDot(c))
            {
                return Fail(position, 1, FormulaFaults.DotInBrackets);
            }

            if (char.IsAsciiLetterLower(c))
            {
                return Fail(position, 1, FormulaFaults.SmallLetter);
            }
        }

        return Fail(bracket.Position, 1, FormulaFaults.NotClosed(text[bracket.Position]));
    }

    private bool Coefficient()
    {
        int start = position;
        while (position < text.Length && FormulaCharacters.Digit(text[position]) >= 0)
        {
            position++;
        }

        return Fail(start, position - start, FormulaFaults.Coefficient, IfRead(text[position..].Trim().ToString()));
    }

    private bool Isotope()
    {
        int start = position;
        while (position < text.Length && FormulaCharacters.SuperscriptDigit(text[position]) >= 0)
        {
            position++;
        }

        return Fail(start, Math.Min(position + 1, text.Length) - start, FormulaFaults.Isotope);
    }
}
