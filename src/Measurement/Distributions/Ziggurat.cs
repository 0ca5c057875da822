using System.Runtime.CompilerServices;

namespace Calx.Measurement.Distributions;

/// <summary>
/// Standard normal draws by the ziggurat method (Marsaglia and Tsang 2000) with 256 layers, in Doornik's form (2005),
/// in which layer, sign and position come from different bits. The method is exact: all but one draw in a hundred take
/// one integer, one comparison and one product; the rest are decided with the density itself.
/// </summary>
internal static class Ziggurat
{
    private const int Layers = 256;
    private const double Steps = 1L << 52;

    // Where the base layer ends, so that 256 layers have the same area (Doornik 2005, table 1).
    private const double TailFrom = 3.6541528853610088;

    // x of each layer's right edge, from the base outwards in, and the density there.
    private static readonly double[] Edge = Edges();
    private static readonly double[] Height = [.. Edge.Select(x => Math.Exp(-x * x / 2))];

    // For each layer, the width of one step of the 52-bit position, and the position below which no test is needed.
    private static readonly double[] Width = [.. Edge.Take(Layers).Select(x => x / Steps)];
    private static readonly long[] Safe = [.. Enumerable.Range(0, Layers).Select(i => (long)(Edge[i + 1] / Edge[i] * Steps))];

    /// <summary>The next draw.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Next(ref Xoshiro generator)
    {
        ulong bits = generator.Next();
        int layer = (int)(bits & 0xFF);
        long position = (long)(bits >> 12);
        double x = position * Width[layer];
        return position < Safe[layer] ? Signed(x, bits) : Decide(ref generator, bits);
    }

    // The sign is bit 8 of the integer, moved to bit 63 of the number.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Signed(double x, ulong bits)
        => BitConverter.UInt64BitsToDouble(BitConverter.DoubleToUInt64Bits(x) | ((bits & 0x100) << 55));

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static double Decide(ref Xoshiro generator, ulong bits)
    {
        while (true)
        {
            int layer = (int)(bits & 0xFF);
            long position = (long)(bits >> 12);
            double x = position * Width[layer];
            if (position < Safe[layer])
            {
                return Signed(x, bits);
            }

            if (layer == 0)
            {
                return Signed(Tail(ref generator), bits);
            }

            double height = Height[layer] + (generator.NextOpen() * (Height[layer + 1] - Height[layer]));
            if (height < Math.Exp(-x * x / 2))
            {
                return Signed(x, bits);
            }

            bits = generator.Next();
        }
    }

    // Marsaglia's method (1964) for the normal tail beyond a point.
    private static double Tail(ref Xoshiro generator)
    {
        while (true)
        {
            double beyond = -Math.Log(generator.NextOpen()) / TailFrom;
            double chance = -Math.Log(generator.NextOpen());
            if (2 * chance > beyond * beyond)
            {
                return TailFrom + beyond;
            }
        }
    }

    private static double[] Edges()
    {
        double height = Math.Exp(-TailFrom * TailFrom / 2);
        double tailArea = StandardNormal.UpperTail(TailFrom) * Math.Sqrt(2 * Math.PI);
        double area = (TailFrom * height) + tailArea;
        double[] edge = new double[Layers + 1];
        // The base layer is a rectangle of the same area as base and tail together: its width is no point of the curve.
        edge[0] = area / height;
        edge[1] = TailFrom;
        for (int i = 2; i < Layers; i++)
        {
            edge[i] = Math.Sqrt(-2 * Math.Log((area / edge[i - 1]) + Math.Exp(-edge[i - 1] * edge[i - 1] / 2)));
        }

        return edge;
    }
}
