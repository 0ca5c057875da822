using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;

namespace Calx.Chemistry.Equations;

/// <summary>
/// What an equation must conserve: a row for each element in order of first appearance, and one for charge where any
/// species has one. A cell is what one formula unit brings, negative on the right.
/// </summary>
internal sealed class ConservedAmounts
{
    public const string Charge = "charge";

    private readonly short[] elements;

    private ConservedAmounts(short[] elements, long[] cells, int rows, int columns)
    {
        this.elements = elements;
        Cells = cells;
        Rows = rows;
        Columns = columns;
    }

    /// <summary>Row by row.</summary>
    public long[] Cells { get; }

    public int Rows { get; }

    public int Columns { get; }

    public static ConservedAmounts Of(Equation equation)
    {
        Span<short> found = stackalloc short[ElementTable.Count];
        int count = FindElements(equation, found, out bool charged);
        int columns = equation.Terms.Length;
        int rows = count + (charged ? 1 : 0);
        long[] cells = new long[rows * columns];
        for (int column = 0; column < columns; column++)
        {
            Formula formula = equation.Terms[column].Formula;
            int sign = column < equation.LeftCount ? 1 : -1;
            foreach (ElementCount atoms in formula.Atoms)
            {
                cells[(found.IndexOf(atoms.Index) * columns) + column] = sign * atoms.Count;
            }

            if (charged)
            {
                cells[(count * columns) + column] = sign * formula.Charge;
            }
        }

        return new ConservedAmounts(found[..count].ToArray(), cells, rows, columns);
    }

    public static int CountElements(Equation equation)
    {
        Span<short> found = stackalloc short[ElementTable.Count];
        return FindElements(equation, found, out _);
    }

    /// <summary>The element's name, or the word charge.</summary>
    public string Name(int row) => row < elements.Length ? ElementTable.At(elements[row]).Name : Charge;

    public ReadOnlySpan<long> Row(int row) => Cells.AsSpan(row * Columns, Columns);

    /// <summary>Whether the coefficients as written conserve everything.</summary>
    public WrittenCheck Check(Equation equation)
    {
        var imbalances = new List<Imbalance>();
        for (int row = 0; row < Rows; row++)
        {
            long left = 0;
            long right = 0;
            for (int column = 0; column < Columns; column++)
            {
                long amount = Row(row)[column] * (equation.Terms[column].Coefficient ?? 1);
                left += column < equation.LeftCount ? amount : 0;
                right -= column < equation.LeftCount ? 0 : amount;
            }

            if (left != right)
            {
                imbalances.Add(new Imbalance(Name(row), left, right));
            }
        }

        long factor = CommonFactor(equation);
        return imbalances.Count > 0 ? new WrittenCheck.NotBalanced(imbalances)
            : factor > 1 ? new WrittenCheck.Multiple(factor)
            : new WrittenCheck.Lowest();
    }

    private static long CommonFactor(Equation equation)
    {
        long factor = 0;
        foreach (Term term in equation.Terms)
        {
            factor = NullSpace.CommonDivisor(factor, term.Coefficient ?? 1);
        }

        return factor;
    }

    private static int FindElements(Equation equation, Span<short> found, out bool charged)
    {
        int count = 0;
        charged = false;
        foreach (Term term in equation.Terms)
        {
            charged |= term.Formula.Charge != 0;
            foreach (ElementCount atoms in term.Formula.Atoms)
            {
                if (!found[..count].Contains(atoms.Index))
                {
                    found[count++] = atoms.Index;
                }
            }
        }

        return count;
    }
}
