using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;

namespace Calx.Chemistry.Formulas;

/// <summary>
/// Reads one formula in a single pass, in time in proportion to its length. Grammar:
/// <code>
/// formula  := blank* (electron | body) charge? blank* state? blank*
/// electron := 'e'                                     a charge of -1 must follow
/// body     := part (blank* dot blank* number? part)*  the number multiplies the part behind it
/// part     := unit+
/// unit     := (symbol | open part close) number?
/// symbol   := capital small?                          the longest that is written; D and T are isotopes of hydrogen
/// number   := digit+                                  plain or subscript, not beginning with 0
/// charge   := '^' '{'? (digits sign | sign digits | sign+) '}'?  |  blank+ digits sign
///           | superscript digits and sign  |  sign+
/// dot      := '·' '.' '*' and look-alikes             open, close := ( ) [ ] { }
/// state    := '(s)' '(l)' '(g)' '(aq)'
/// </code>
/// A dot is always that of a hydrate. Where it can only be a decimal point (behind a number 0 or 1)
/// the formula is declined: its numbers would not be whole. A bare sign behind plain digits is declined where the last
/// digit may belong to the charge: behind a single symbol (Fe3+), a single square bracket ([Fe(CN)6]4-) and behind two
/// digits (SO42-).
/// </summary>
internal ref partial struct FormulaParser
{
    private readonly ReadOnlySpan<char> text;
    private readonly int offset;

    // A suggestion is read to see whether it can be, without suggestions of its own: one level, whatever the text.
    private readonly bool suggest;
    private readonly Span<char> plain;
    private readonly Span<ElementCount> atoms;
    private int position;
    private int plainLength;
    private int atomRuns;
    private int charge;
    private MatterState state;

    // How the last number was written: a sign behind it may be ambiguous.
    private int lastDigits;
    private TextFault? fault;

    private FormulaParser(
        ReadOnlySpan<char> text, int offset, bool suggest, Span<char> plain, Span<ElementCount> atoms)
    {
        this.text = text;
        this.offset = offset;
        this.suggest = suggest;
        this.plain = plain;
        this.atoms = atoms;
    }

    /// <summary>Reads a formula that is part of a longer text.</summary>
    /// <param name="text">The formula.</param>
    /// <param name="source">A string equal to <paramref name="text"/>, kept where it is the plain form, or null.</param>
    /// <param name="offset">Where the formula begins in the whole text: added to the spans of faults.</param>
    /// <param name="suggest">Whether a fault may carry a suggestion.</param>
    public static Parsed<Formula> Read(ReadOnlySpan<char> text, string? source, int offset, bool suggest = true)
    {
        if (text.Length > FormulaLimits.Characters)
        {
            return new TextFault(new SourceSpan(offset, text.Length), FormulaFaults.TooLong);
        }

        // A bare sign gains a ^ in the plain form; everything else keeps its length or loses some.
        Span<char> plain = stackalloc char[text.Length + 4];
        Span<ElementCount> atoms = stackalloc ElementCount[text.Length];
        var parser = new FormulaParser(text, offset, suggest, plain, atoms);
        if (parser.Formula())
        {
            return parser.Result(source);
        }

        TextFault fault = parser.fault!;
        return suggest && fault.Suggestion is null && FormulaGuess.Best(text) is { } guess
            ? new TextFault(fault.Span, fault.Reason, guess)
            : fault;
    }

    private bool Formula()
    {
        SkipBlanks();
        if (position == text.Length)
        {
            return Fail(position, 0, FormulaFaults.Empty);
        }

        bool electron = text[position] == 'e'
            && (position + 1 == text.Length || !char.IsAsciiLetter(text[position + 1]));
        if (electron ? !Electron() : !Body() || !Charge())
        {
            return false;
        }

        SkipBlanks();
        if (position < text.Length && text[position] == '(')
        {
            state = FormulaCharacters.StateAt(text[position..], out int length);
            position += state == MatterState.NotSaid ? 0 : length;
            foreach (char c in FormulaCharacters.Written(state))
            {
                Put(c);
            }
        }

        SkipBlanks();
        return position == text.Length || Trailing();
    }

    private bool Electron()
    {
        int start = position++;
        Put('e');
        return Charge() && (charge == -1 || Fail(start, position - start, FormulaFaults.BareElectron, "e^-"));
    }

    private bool Body()
    {
        if (!Part(1))
        {
            return false;
        }

        while (DotAhead())
        {
            SkipBlanks();
            position++;
            SkipBlanks();
            Put(FormulaCharacters.HydrateDot);
            if (!Multiplier(out long multiplier) || !Part(multiplier))
            {
                return false;
            }
        }

        return true;
    }

    private readonly bool DotAhead()
    {
        int ahead = AfterBlanks(position);
        return ahead < text.Length && FormulaCharacters.IsHydrateDot(text[ahead]);
    }

    private bool Multiplier(out long multiplier)
    {
        multiplier = 1;
        int start = position;
        if (position < text.Length && text[position] is 'x' or 'n' or '½' or '¼' or '¾')
        {
            bool known = text[position] is not ('x' or 'n');
            return Fail(position, 1, known ? FormulaFaults.WholeWater : FormulaFaults.UnknownWater);
        }

        if (!Number(ref multiplier))
        {
            return false;
        }

        if (multiplier > 1)
        {
            Put(text[start..position]);
        }

        return true;
    }

    private Parsed<Formula> Result(string? source)
    {
        ElementCount[] merged = Merged();
        foreach (ElementCount entry in merged)
        {
            if (entry.Count > FormulaLimits.Atoms)
            {
                return new TextFault(new SourceSpan(offset, text.Length), FormulaFaults.TooManyAtoms);
            }
        }

        ReadOnlySpan<char> written = plain[..plainLength];
        string kept = source is not null && written.SequenceEqual(source) ? source : new string(written);
        return new Formula(kept, merged, charge, state);
    }

    // Atoms of one element, wherever they stand, become one entry in order of first appearance.
    private readonly ElementCount[] Merged()
    {
        int distinct = 0;
        for (int i = 0; i < atomRuns; i++)
        {
            int place = 0;
            while (place < distinct && atoms[place].Index != atoms[i].Index)
            {
                place++;
            }

            long before = place < distinct ? atoms[place].Count : 0;
            distinct = Math.Max(distinct, place + 1);
            atoms[place] = new ElementCount(atoms[i].Index, before + atoms[i].Count);
        }

        return atoms[..distinct].ToArray();
    }

    private void SkipBlanks() => position = AfterBlanks(position);

    private readonly int AfterBlanks(int from)
    {
        while (from < text.Length && char.IsWhiteSpace(text[from]))
        {
            from++;
        }

        return from;
    }

    private void Put(char c) => plain[plainLength++] = c;

    // Numbers go into the plain form in plain digits.
    private void Put(ReadOnlySpan<char> digits)
    {
        foreach (char digit in digits)
        {
            Put((char)('0' + FormulaCharacters.Digit(digit)));
        }
    }

    // The text, if a suggestion is wanted and this can be read.
    private readonly string? IfRead(string meant)
        => suggest && Read(meant, null, 0, suggest: false).Succeeded ? meant : null;

    private bool Fail(int start, int length, string reason, string? suggestion = null)
    {
        fault = new TextFault(new SourceSpan(offset + start, length), reason, suggestion);
        return false;
    }
}
