using Calx.Chemistry.Elements;

namespace Calx.Chemistry.Formulas;

// Symbols, brackets and numbers.
internal ref partial struct FormulaParser
{
    // Reads units up to the end, a dot, a charge or a state; all its atoms count 'multiplier' times.
    private bool Part(long multiplier)
    {
        Span<OpenBracket> open = stackalloc OpenBracket[FormulaLimits.Depth];
        int depth = 0;
        int first = atomRuns;
        int start = position;
        lastDigits = 0;
        while (position < text.Length)
        {
            char c = text[position];
            if (char.IsAsciiLetterUpper(c))
            {
                if (!Symbol(c))
                {
                    return false;
                }
            }
            else if (FormulaCharacters.Closing(c) != '\0' && !StateAhead())
            {
                if (depth == open.Length)
                {
                    return Fail(position, 1, FormulaFaults.TooDeep);
                }

                open[depth++] = new OpenBracket(position++, atomRuns);
                Put(c);
                lastDigits = 0;
            }
            else if (depth > 0 && FormulaCharacters.Closes(c))
            {
                if (!Close(open[--depth]))
                {
                    return false;
                }
            }
            else
            {
                break;
            }
        }

        return depth > 0 ? NotClosed(open[depth - 1])
            : position == start ? NoUnit()
            : Times(first, multiplier);
    }

    private readonly bool StateAhead()
        => FormulaCharacters.StateAt(text[position..], out _) != MatterState.NotSaid;

    private bool Symbol(char capital)
    {
        bool two = position + 1 < text.Length && char.IsAsciiLetterLower(text[position + 1]);
        int index = two ? ElementTable.IndexOf(capital, text[position + 1]) : ElementTable.IndexOf(capital);
        int length = two ? 2 : 1;
        if (index < 0)
        {
            return Fail(position, length, FormulaFaults.NoElement(text.Slice(position, length)));
        }

        Put(capital);
        if (two)
        {
            Put(text[position + 1]);
        }

        position += length;
        if (position == text.Length)
        {
            lastDigits = 0;
            atoms[atomRuns++] = new ElementCount((short)index, 1);
            return true;
        }

        int digits = position;
        long count = 1;
        if (!Number(ref count))
        {
            return false;
        }

        PutCount(digits, count);
        atoms[atomRuns++] = new ElementCount((short)index, count);
        return true;
    }

    private bool Close(OpenBracket bracket)
    {
        char close = text[position];
        char opened = text[bracket.Position];
        if (close != FormulaCharacters.Closing(opened))
        {
            return Fail(position, 1, FormulaFaults.WrongBracket(opened, close));
        }

        if (atomRuns == bracket.FirstRun)
        {
            return Fail(bracket.Position, position + 1 - bracket.Position, FormulaFaults.EmptyBrackets);
        }

        position++;
        Put(close);
        int digits = position;
        long count = 1;
        if (!Number(ref count))
        {
            return false;
        }

        PutCount(digits, count);
        return Times(bracket.FirstRun, count);
    }

    private void PutCount(int digits, long count)
    {
        if (count > 1)
        {
            Put(text[digits..position]);
        }
    }

    private bool Times(int firstRun, long factor)
    {
        if (factor == 1)
        {
            return true;
        }

        for (int i = firstRun; i < atomRuns; i++)
        {
            // At most 10^9 times 10^6: no overflow. The sum over runs stays below 256 times the limit.
            long count = atoms[i].Count * factor;
            if (count > FormulaLimits.Atoms)
            {
                return Fail(0, text.Length, FormulaFaults.TooManyAtoms);
            }

            atoms[i] = new ElementCount(atoms[i].Index, count);
        }

        return true;
    }

    // Reads a number where one stands; 'value' stays where none does.
    private bool Number(ref long value)
    {
        int start = position;
        long read = 0;
        while (position < text.Length && FormulaCharacters.Digit(text[position]) is >= 0 and int digit)
        {
            if (position - start == FormulaLimits.CountDigits)
            {
                return Fail(start, position + 1 - start, FormulaFaults.TooManyDigits);
            }

            read = (read * 10) + digit;
            position++;
        }

        int digits = position - start;
        lastDigits = digits > 0 && char.IsAsciiDigit(text[start]) ? digits : 0;
        if (digits == 0)
        {
            return true;
        }

        value = read;
        return IsWhole(start, read) && (FormulaCharacters.Digit(text[start]) > 0 || ZeroFirst(start));
    }

    // 'Fe0.95O' and 'Fe1,5O': nobody writes a count of 0 or 1, so the dot or comma is a decimal point.
    private bool IsWhole(int start, long read)
    {
        bool followed = position + 1 < text.Length && FormulaCharacters.Digit(text[position + 1]) >= 0;
        bool point = followed && read <= 1 && (text[position] is '.' or ',');
        return !point || Fail(
            start,
            position + 2 - start,
            start > 0 && FormulaCharacters.IsHydrateDot(text[start - 1]) ? FormulaFaults.WholeWater : FormulaFaults.WholeCounts);
    }

    // 'C02' and 'H20' with a zero for the letter O: only the first can be noticed.
    private bool ZeroFirst(int start)
    {
        string? meant = text[start] == '0' ? IfRead(string.Concat(text[..start], "O", text[(start + 1)..])) : null;
        return Fail(start, position - start, FormulaFaults.ZeroCount, meant);
    }

    private readonly record struct OpenBracket(int Position, int FirstRun);
}
