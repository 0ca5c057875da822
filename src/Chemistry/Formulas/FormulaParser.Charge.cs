namespace Calx.Chemistry.Formulas;

// The charge in its many spellings.
internal ref partial struct FormulaParser
{
    private bool Charge()
    {
        int start = position;
        if (position == text.Length)
        {
            return true;
        }

        char c = text[position];
        bool read = c == '^' ? MarkedCharge()
            : FormulaCharacters.SuperscriptDigit(c) >= 0 ? RaisedCharge()
            : FormulaCharacters.Sign(c) != 0 ? BareCharge(start)
            : !char.IsWhiteSpace(c) || SpacedCharge();
        if (read && charge != 0)
        {
            PutCharge();
        }

        return read;
    }

    // ^2-  ^-  ^-2  ^{2-}  ^--
    private bool MarkedCharge()
    {
        int start = position++;
        bool braced = position < text.Length && text[position] == '{';
        position += braced ? 1 : 0;
        bool signFirst = position < text.Length && FormulaCharacters.Sign(text[position]) != 0;
        bool read = signFirst ? Signs(start) && (charge is not (1 or -1) || DigitsBehind(start)) : DigitsAndSign(start);
        if (!read || !braced)
        {
            return read;
        }

        return position < text.Length && text[position++] == '}'
            || Fail(start, position - start, FormulaFaults.NotClosed('{'));
    }

    private bool RaisedCharge() => DigitsAndSign(position);

    // A blank, then digits and a sign: 'SO4 2-'. Anything else behind a blank is not for us.
    private bool SpacedCharge()
    {
        int ahead = AfterBlanks(position);
        int end = ahead;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        if (end == ahead || end == text.Length || FormulaCharacters.Sign(text[end]) == 0)
        {
            return true;
        }

        position = ahead;
        return DigitsAndSign(ahead);
    }

    private bool BareCharge(int start)
    {
        if (lastDigits > 0 && text[start] is not ('⁺' or '⁻') && MayBelongToCharge(start) is { } meant)
        {
            return Fail(start - lastDigits, lastDigits + 1, FormulaFaults.TwoReadings, meant);
        }

        if (!Signs(start))
        {
            return false;
        }

        bool number = position < text.Length && char.IsAsciiDigit(text[position]);
        return !number || Fail(start, position + 1 - start, FormulaFaults.SignFirst);
    }

    // Fe3+ may be Fe^3+ or Fe3^+; SO42- may be SO4^2- or SO42^-. NH4+ and NO3- are plain.
    private readonly string? MayBelongToCharge(int start)
    {
        bool complex = plain[0] == '[' && text[start - lastDigits - 1] == ']';
        bool lone = complex || (atomRuns == 1 && plain[..plainLength].IndexOfAny('(', '[', '{') < 0);
        int kept = lone ? start - lastDigits : start - 1;
        bool doubtful = (lone || lastDigits > 1) && text[start - 1] is >= '1' and <= '4' && text[kept] != '0';
        string meant = string.Concat(text[..kept], "^", text[kept..]);
        return doubtful && Read(meant, null, 0, suggest: false) is { Succeeded: true } ? meant : null;
    }

    // Digits, plain or raised, then one sign.
    private bool DigitsAndSign(int start)
    {
        if (!ChargeDigits(start, out int size))
        {
            return false;
        }

        int sign = position < text.Length ? FormulaCharacters.Sign(text[position]) : 0;
        if (sign == 0)
        {
            return Fail(start, position - start, FormulaFaults.ChargeSign);
        }

        position++;
        charge = sign * size;
        return size > 0 || Fail(start, position - start, FormulaFaults.ZeroCharge);
    }

    private bool DigitsBehind(int start)
    {
        if (position == text.Length || !char.IsAsciiDigit(text[position]))
        {
            return true;
        }

        if (!ChargeDigits(start, out int size))
        {
            return false;
        }

        charge *= size;
        return size > 0 || Fail(start, position - start, FormulaFaults.ZeroCharge);
    }

    private bool ChargeDigits(int start, out int size)
    {
        size = 0;
        while (position < text.Length && ChargeDigit(text[position]) is >= 0 and int digit)
        {
            size = (size * 10) + digit;
            position++;
            if (size > FormulaLimits.Charge)
            {
                return Fail(start, position - start, FormulaFaults.TooMuchCharge);
            }
        }

        return true;
    }

    private static int ChargeDigit(char c) => char.IsAsciiDigit(c) ? c - '0' : FormulaCharacters.SuperscriptDigit(c);

    // One or more signs, all alike: Ca++.
    private bool Signs(int start)
    {
        int first = FormulaCharacters.Sign(text[position]);
        while (position < text.Length && FormulaCharacters.Sign(text[position]) is not 0 and int sign)
        {
            position++;
            charge += sign;
            if (sign != first)
            {
                return Fail(start, position - start, FormulaFaults.SignsDiffer);
            }
        }

        return Math.Abs(charge) <= FormulaLimits.Charge || Fail(start, position - start, FormulaFaults.TooMuchCharge);
    }

    private void PutCharge()
    {
        Put('^');
        int size = Math.Abs(charge);
        if (size > 9)
        {
            Put((char)('0' + (size / 10)));
        }

        if (size > 1)
        {
            Put((char)('0' + (size % 10)));
        }

        Put(charge > 0 ? '+' : '-');
    }
}
