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
            : blankBefore ? Fail(position, 1, FormulaFaults.InnerSpace)
            : FormulaCharacters.SuperscriptDigit(c) >= 0 ? Fail(position, 1, FormulaFaults.ChargeSign)
            : Fail(position, 1, FormulaFaults.Unexpected(c));
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

        string rest = text[position..].Trim().ToString();
        bool reads = Read(rest, null, 0, suggest: false).Succeeded;
        return Fail(start, position - start, FormulaFaults.Coefficient, reads ? rest : null);
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
