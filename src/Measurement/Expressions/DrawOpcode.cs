namespace Calx.Measurement.Expressions;

/// <summary>What one instruction of a <see cref="DrawProgram"/> does to each draw.</summary>
internal enum DrawOpcode
{
    Add,
    Subtract,
    Multiply,
    Divide,
    Min,
    Max,
    Power,
    Copy,
    Negate,
    Ln,
    Log10,
    Exp,
    Sqrt,
    Abs,
}
