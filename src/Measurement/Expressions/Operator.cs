namespace Calx.Measurement.Expressions;

/// <summary>The operators between two operands.</summary>
public enum Operator
{
    /// <summary>Sum, <c>+</c>.</summary>
    Add,

    /// <summary>Difference, <c>-</c>.</summary>
    Subtract,

    /// <summary>Product, <c>*</c>.</summary>
    Multiply,

    /// <summary>Quotient, <c>/</c>.</summary>
    Divide,

    /// <summary>Power, <c>^</c>: groups from the right.</summary>
    Power,
}
