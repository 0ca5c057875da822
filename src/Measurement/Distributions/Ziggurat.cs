using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

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

    private static readonly Layer[] LayerTable =
        [.. Enumerable.Range(0, Layers).Select(i => new Layer(Edge[i] / Steps, (long)(Edge[i + 1] / Edge[i] * Steps)))];

    /// <summary>The next draw.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Next(ref Xoshiro generator)
    {
        ulong bits = generator.Next();
        return TryQuick(bits, out double draw) ? draw : Decide(ref generator, bits);
    }

    /// <summary>The draw that an integer stands for, in all but one case in a hundred.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool TryQuick(ulong bits, out double draw)
    {
        // The index has 8 bits and the table 256 entries: no check is needed, and the loop is a third faster without.
        ref Layer layer = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(LayerTable), (nint)(bits & 0xFF));
        long position = (long)(bits >> 12);
        draw = Signed(position * layer.Width, bits);
        return position < layer.Safe;
    }

    // The sign is bit 8 of the integer, moved to bit 63 of the number.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Signed(double x, ulong bits)
        => BitConverter.UInt64BitsToDouble(BitConverter.DoubleToUInt64Bits(x) | ((bits & 0x100) << 55));

    /// <summary>The draw that begins with an integer which <see cref="TryQuick"/> left undecided.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static double Decide(ref Xoshiro generator, ulong bits)
    {
        while (true)
        {
            int layer = (int)(bits & 0xFF);
            long position = (long)(bits >> 12);
            double x = position * LayerTable[layer].Width;
            if (position < LayerTable[layer].Safe)
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

    // The width of one step of the 52-bit position, and the position below which no test is needed.
    private readonly record struct Layer(double Width, long Safe);
}
