using System.Numerics;
using System.Runtime.InteropServices;

namespace Calx.Measurement.Distributions;

/// <summary>Scales and shifts a block of draws, several at a time; each draw is rounded as it would be alone.</summary>
internal static class Affine
{
    public static void Apply(Span<double> values, double scale, double shift)
    {
        Span<Vector<double>> vectors = MemoryMarshal.Cast<double, Vector<double>>(values);
        var scales = new Vector<double>(scale);
        var shifts = new Vector<double>(shift);
        for (int i = 0; i < vectors.Length; i++)
        {
            vectors[i] = shifts + (scales * vectors[i]);
        }

        for (int i = vectors.Length * Vector<double>.Count; i < values.Length; i++)
        {
            values[i] = shift + (scale * values[i]);
        }
    }
}
