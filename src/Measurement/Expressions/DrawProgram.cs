using System.Buffers;
using System.Numerics;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Expressions;

/// <summary>
/// A formula made ready for many draws at a time: a short list of operations, each run over a block of draws that
/// stays in the processor's nearest cache. It holds no state between runs: any number of threads may share one, and
/// the result of a draw does not depend on the block or thread it falls into.
/// </summary>
public sealed class DrawProgram
{
    private readonly Expression formula;
    private readonly string[] inputs;
    private readonly Func<string, double> molarMass;
    private readonly DrawInstruction[] instructions;
    private readonly double? constant;
    private readonly int scratchBlocks;

    private DrawProgram(Expression formula, string[] inputs, Func<string, double> molarMass)
    {
        this.formula = formula;
        this.inputs = inputs;
        this.molarMass = molarMass;
        var compiler = new DrawCompiler(inputs, molarMass);
        constant = compiler.Compile(formula);
        (instructions, scratchBlocks) = DrawScratch.Allocate(compiler.Instructions);
    }

    /// <summary>How many operations a draw takes: numbers are folded and equal parts computed once.</summary>
    public int Operations => instructions.Length;

    /// <summary>Makes a formula ready.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="inputs">The names of its inputs, in the order of the columns of draws; others may stand among
    /// them.</param>
    /// <param name="molarMass">Molar mass for each formula text, in g/mol, taken as exact; may be null where the
    /// formula asks for none.</param>
    /// <exception cref="ArgumentException">A name is not among the inputs, or a molar mass is asked for and not
    /// supplied.</exception>
    /// <exception cref="UndefinedResultException">A part without inputs has no value, as in 1 / 0.</exception>
    public static DrawProgram Compile(
        Expression formula, IReadOnlyList<string> inputs, Func<string, double>? molarMass = null)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(inputs);
        return new DrawProgram(formula, [.. inputs], molarMass ?? NoMolarMass);
    }

    /// <summary>Computes the formula for each draw.</summary>
    /// <param name="columns">The draws of each input, a column an input, in the order of the inputs.</param>
    /// <param name="count">How many draws to compute, from the first on.</param>
    /// <param name="result">Receives a value for each draw.</param>
    /// <exception cref="ArgumentException">A column is missing or holds fewer draws, or the result has no room.</exception>
    /// <exception cref="UndefinedResultException">A draw has no finite value; the exception names the operation and
    /// its place.</exception>
    public void Evaluate(ReadOnlySpan<double[]> columns, int count, Span<double> result)
    {
        if (columns.Length != inputs.Length)
        {
            throw new ArgumentException(
                $"There are {columns.Length} columns for {inputs.Length} inputs.", nameof(columns));
        }

        foreach (double[] column in columns)
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThan(count, column.Length);
        }

        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, result.Length);
        double[] scratch = ArrayPool<double>.Shared.Rent(scratchBlocks * DrawBlock.Capacity);
        try
        {
            int whole = count - (count % Vector<double>.Count);
            EvaluateBlocks(columns, whole, result, scratch);
            EvaluateRest(columns, whole, result[whole..count], scratch);
        }
        finally
        {
            ArrayPool<double>.Shared.Return(scratch);
        }
    }

    private static double NoMolarMass(string substance)
        => throw new ArgumentException($"The formula asks for M({substance}), and no molar masses are supplied.");

    private void EvaluateBlocks(ReadOnlySpan<double[]> columns, int count, Span<double> result, double[] scratch)
    {
        for (int first = 0; first < count; first += DrawBlock.Capacity)
        {
            int length = Math.Min(DrawBlock.Capacity, count - first);
            if (!Run(new DrawBlock(columns, first, scratch, length), result.Slice(first, length)))
            {
                throw Fault(columns, first, length);
            }
        }
    }

    // Draws that do not fill a vector are filled up with the last of them, so that they go the same way as all others.
    private void EvaluateRest(ReadOnlySpan<double[]> columns, int first, Span<double> result, double[] scratch)
    {
        if (result.Length == 0)
        {
            return;
        }

        double[][] padded = new double[columns.Length][];
        for (int i = 0; i < padded.Length; i++)
        {
            padded[i] = new double[Vector<double>.Count];
            Array.Fill(padded[i], columns[i][first + result.Length - 1]);
            columns[i].AsSpan(first, result.Length).CopyTo(padded[i]);
        }

        double[] values = new double[Vector<double>.Count];
        EvaluateBlocks(padded, values.Length, values, scratch);
        values.AsSpan(0, result.Length).CopyTo(result);
    }

    private bool Run(in DrawBlock block, Span<double> target)
    {
        bool finite = true;
        for (int i = 0; i < instructions.Length; i++)
        {
            bool last = i == instructions.Length - 1 && constant is null;
            finite &= block.Run(instructions[i], last ? target : block.Scratch(instructions[i].Target));
        }

        if (constant is { } value)
        {
            target.Fill(value);
        }

        return finite;
    }

    // The block knows only that something went wrong: the slow way through the tree finds what and where.
    private UndefinedResultException Fault(ReadOnlySpan<double[]> columns, int first, int length)
    {
        double[] draw = new double[inputs.Length];
        for (int place = first; place < first + length; place++)
        {
            for (int i = 0; i < draw.Length; i++)
            {
                draw[i] = columns[i][place];
            }

            try
            {
                formula.Evaluate(name => draw[Array.IndexOf(inputs, name)], molarMass);
            }
            catch (UndefinedResultException fault)
            {
                return fault;
            }
        }

        return new UndefinedResultException("formula", "a draw is not a finite number, or its result is too large");
    }
}
