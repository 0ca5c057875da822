using System.Numerics;
using System.Runtime.CompilerServices;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Expressions;

/// <summary>
/// The loops over a block. Each length is a whole number of vectors; each loop says whether all its results are finite,
/// so that a division by zero is noticed even where a later operation would hide it. They are compiled at once and
/// fully: left to warm up, a short run would be over before they are fast.
/// </summary>
internal static class DrawLoops
{
    private static Vector<double> Largest => new(double.MaxValue);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static bool Unary<TKernel>(ref double operand, ref double result, int length)
        where TKernel : struct, IUnaryKernel
    {
        Vector<long> finite = Vector<long>.AllBitsSet;
        for (nuint i = 0; i < (nuint)length; i += (nuint)Vector<double>.Count)
        {
            Vector<double> value = TKernel.Apply(Vector.LoadUnsafe(ref operand, i));
            finite &= Vector.LessThanOrEqual(Vector.Abs(value), Largest);
            value.StoreUnsafe(ref result, i);
        }

        return Vector.EqualsAll(finite, Vector<long>.AllBitsSet);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static bool Binary<TKernel>(ref double left, ref double right, ref double result, int length)
        where TKernel : struct, IBinaryKernel
    {
        Vector<long> finite = Vector<long>.AllBitsSet;
        for (nuint i = 0; i < (nuint)length; i += (nuint)Vector<double>.Count)
        {
            Vector<double> value = TKernel.Apply(Vector.LoadUnsafe(ref left, i), Vector.LoadUnsafe(ref right, i));
            finite &= Vector.LessThanOrEqual(Vector.Abs(value), Largest);
            value.StoreUnsafe(ref result, i);
        }

        return Vector.EqualsAll(finite, Vector<long>.AllBitsSet);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static bool LeftConstant<TKernel>(double left, ref double right, ref double result, int length)
        where TKernel : struct, IBinaryKernel
    {
        var constant = new Vector<double>(left);
        Vector<long> finite = Vector<long>.AllBitsSet;
        for (nuint i = 0; i < (nuint)length; i += (nuint)Vector<double>.Count)
        {
            Vector<double> value = TKernel.Apply(constant, Vector.LoadUnsafe(ref right, i));
            finite &= Vector.LessThanOrEqual(Vector.Abs(value), Largest);
            value.StoreUnsafe(ref result, i);
        }

        return Vector.EqualsAll(finite, Vector<long>.AllBitsSet);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static bool RightConstant<TKernel>(ref double left, double right, ref double result, int length)
        where TKernel : struct, IBinaryKernel
    {
        var constant = new Vector<double>(right);
        Vector<long> finite = Vector<long>.AllBitsSet;
        for (nuint i = 0; i < (nuint)length; i += (nuint)Vector<double>.Count)
        {
            Vector<double> value = TKernel.Apply(Vector.LoadUnsafe(ref left, i), constant);
            finite &= Vector.LessThanOrEqual(Vector.Abs(value), Largest);
            value.StoreUnsafe(ref result, i);
        }

        return Vector.EqualsAll(finite, Vector<long>.AllBitsSet);
    }

    /// <summary>Powers, one draw at a time; a step of 0 stays on one number.</summary>
    public static bool Power(ref double number, int numberStep, ref double exponent, int exponentStep, Span<double> result)
    {
        bool finite = true;
        for (int i = 0; i < result.Length; i++)
        {
            result[i] = CheckedMath.RawPower(
                Unsafe.Add(ref number, i * numberStep), Unsafe.Add(ref exponent, i * exponentStep));
            finite &= double.IsFinite(result[i]);
        }

        return finite;
    }
}
