using System.Numerics;

namespace Calx.Measurement.Expressions;

/// <summary>An operation on one operand, several draws at a time.</summary>
internal interface IUnaryKernel
{
    static abstract Vector<double> Apply(Vector<double> operand);
}

/// <summary>An operation on two operands, several draws at a time.</summary>
internal interface IBinaryKernel
{
    static abstract Vector<double> Apply(Vector<double> left, Vector<double> right);
}

/// <summary>The operations of a block program. All but Ln, Log10 and Exp round as IEEE 754 asks, on every processor;
/// those three agree with it to some 15 digits.</summary>
internal static class DrawKernels
{
    internal readonly struct Add : IBinaryKernel
    {
        public static Vector<double> Apply(Vector<double> left, Vector<double> right) => left + right;
    }

    internal readonly struct Subtract : IBinaryKernel
    {
        public static Vector<double> Apply(Vector<double> left, Vector<double> right) => left - right;
    }

    internal readonly struct Multiply : IBinaryKernel
    {
        public static Vector<double> Apply(Vector<double> left, Vector<double> right) => left * right;
    }

    internal readonly struct Divide : IBinaryKernel
    {
        public static Vector<double> Apply(Vector<double> left, Vector<double> right) => left / right;
    }

    internal readonly struct Min : IBinaryKernel
    {
        public static Vector<double> Apply(Vector<double> left, Vector<double> right) => Vector.Min(left, right);
    }

    internal readonly struct Max : IBinaryKernel
    {
        public static Vector<double> Apply(Vector<double> left, Vector<double> right) => Vector.Max(left, right);
    }

    internal readonly struct Copy : IUnaryKernel
    {
        public static Vector<double> Apply(Vector<double> operand) => operand;
    }

    internal readonly struct Negate : IUnaryKernel
    {
        public static Vector<double> Apply(Vector<double> operand) => -operand;
    }

    internal readonly struct Abs : IUnaryKernel
    {
        public static Vector<double> Apply(Vector<double> operand) => Vector.Abs(operand);
    }

    internal readonly struct Sqrt : IUnaryKernel
    {
        public static Vector<double> Apply(Vector<double> operand) => Vector.SquareRoot(operand);
    }

    internal readonly struct Ln : IUnaryKernel
    {
        public static Vector<double> Apply(Vector<double> operand) => Vector.Log(operand);
    }

    internal readonly struct Log10 : IUnaryKernel
    {
        // 1 / ln 10
        public static Vector<double> Apply(Vector<double> operand) => Vector.Log(operand) * 0.43429448190325182765;
    }

    internal readonly struct Exp : IUnaryKernel
    {
        public static Vector<double> Apply(Vector<double> operand) => Vector.Exp(operand);
    }
}
