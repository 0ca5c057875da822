using System.Diagnostics;
using System.Runtime.InteropServices;
using K = Calx.Measurement.Expressions.DrawKernels;

namespace Calx.Measurement.Expressions;

/// <summary>One block of draws on its way through a program.</summary>
internal readonly ref struct DrawBlock(ReadOnlySpan<double[]> columns, int first, Span<double> scratch, int length)
{
    /// <summary>Draws in a block. 512 doubles are 4 KiB: three or four scratch blocks and the columns at hand stay in
    /// a first-level cache of 32 KiB, and the cost of choosing a kernel is spread over 512 draws.</summary>
    public const int Capacity = 512;

    private readonly ReadOnlySpan<double[]> columns = columns;
    private readonly Span<double> scratch = scratch;

    /// <summary>Runs one instruction and says whether all results are finite.</summary>
    /// <param name="instruction">What to do.</param>
    /// <param name="target">Where the results go; its length is the block's.</param>
    public bool Run(DrawInstruction instruction, Span<double> target) => instruction.Opcode switch
    {
        DrawOpcode.Add => Binary<K.Add>(instruction, target),
        DrawOpcode.Subtract => Binary<K.Subtract>(instruction, target),
        DrawOpcode.Multiply => Binary<K.Multiply>(instruction, target),
        DrawOpcode.Divide => Binary<K.Divide>(instruction, target),
        DrawOpcode.Min => Binary<K.Min>(instruction, target),
        DrawOpcode.Max => Binary<K.Max>(instruction, target),
        DrawOpcode.Power => Power(instruction, target),
        DrawOpcode.Copy => Unary<K.Copy>(instruction, target),
        DrawOpcode.Negate => Unary<K.Negate>(instruction, target),
        DrawOpcode.Ln => Unary<K.Ln>(instruction, target),
        DrawOpcode.Log10 => Unary<K.Log10>(instruction, target),
        DrawOpcode.Exp => Unary<K.Exp>(instruction, target),
        DrawOpcode.Sqrt => Unary<K.Sqrt>(instruction, target),
        DrawOpcode.Abs => Unary<K.Abs>(instruction, target),
        _ => throw new UnreachableException(),
    };

    /// <summary>The scratch block of that number.</summary>
    public Span<double> Scratch(int index) => scratch.Slice(index * Capacity, length);

    private bool Unary<TKernel>(DrawInstruction instruction, Span<double> target)
        where TKernel : struct, IUnaryKernel
        => DrawLoops.Unary<TKernel>(
            ref MemoryMarshal.GetReference(Find(instruction.Left)), ref MemoryMarshal.GetReference(target), length);

    private bool Binary<TKernel>(DrawInstruction instruction, Span<double> target)
        where TKernel : struct, IBinaryKernel
    {
        DrawOperand left = instruction.Left;
        DrawOperand right = instruction.Right;
        ref double result = ref MemoryMarshal.GetReference(target);
        if (left.IsConstant)
        {
            return DrawLoops.LeftConstant<TKernel>(
                left.Value, ref MemoryMarshal.GetReference(Find(right)), ref result, length);
        }

        ref double lefts = ref MemoryMarshal.GetReference(Find(left));
        return right.IsConstant
            ? DrawLoops.RightConstant<TKernel>(ref lefts, right.Value, ref result, length)
            : DrawLoops.Binary<TKernel>(ref lefts, ref MemoryMarshal.GetReference(Find(right)), ref result, length);
    }

    private bool Power(DrawInstruction instruction, Span<double> target)
    {
        double number = instruction.Left.Value;
        double exponent = instruction.Right.Value;
        bool oneNumber = instruction.Left.IsConstant;
        bool oneExponent = instruction.Right.IsConstant;
        return DrawLoops.Power(
            ref oneNumber ? ref number : ref MemoryMarshal.GetReference(Find(instruction.Left)),
            oneNumber ? 0 : 1,
            ref oneExponent ? ref exponent : ref MemoryMarshal.GetReference(Find(instruction.Right)),
            oneExponent ? 0 : 1,
            target);
    }

    private ReadOnlySpan<double> Find(DrawOperand operand) => operand.Kind == DrawOperandKind.Column
        ? columns[operand.Index].AsSpan(first, length)
        : Scratch(operand.Index);
}
