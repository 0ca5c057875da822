namespace Calx.Measurement.Expressions;

/// <summary>Where an instruction finds an operand.</summary>
internal enum DrawOperandKind
{
    Constant,
    Column,
    Scratch,
}

/// <summary>An operand of an instruction; <c>default</c> is the constant 0.</summary>
internal readonly record struct DrawOperand(DrawOperandKind Kind, int Index, double Value)
{
    public bool IsConstant => Kind == DrawOperandKind.Constant;

    public static DrawOperand Constant(double value) => new(DrawOperandKind.Constant, 0, value);

    public static DrawOperand Column(int index) => new(DrawOperandKind.Column, index, 0);

    public static DrawOperand Scratch(int index) => new(DrawOperandKind.Scratch, index, 0);
}

/// <summary>One operation on a block of draws. The second operand of a one-operand operation is not looked at.</summary>
internal readonly record struct DrawInstruction(DrawOpcode Opcode, DrawOperand Left, DrawOperand Right, int Target);
