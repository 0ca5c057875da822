using System.Numerics;
using System.Runtime.CompilerServices;

namespace Calx.Measurement.Distributions;

/// <summary>
/// The generator xoshiro256** of Blackman and Vigna (2021, <i>Scrambled linear pseudorandom number generators</i>):
/// 256 bits of state, period 2^256 − 1. A struct, so that a loop may keep the state in registers.
/// </summary>
internal struct Xoshiro
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;

    public Xoshiro(ulong s0, ulong s1, ulong s2, ulong s3)
    {
        this.s0 = s0;
        this.s1 = s1;
        this.s2 = s2;
        this.s3 = s3;
    }

    /// <summary>
    /// Fills the state from splitmix64 (Steele, Lea and Flood 2014), as the authors advise. The key that starts it is
    /// mixed from the seed and the stream so that, for one seed, no two streams have the same key.
    /// </summary>
    public static Xoshiro Seeded(ulong seed, ulong stream)
    {
        ulong key = unchecked(Mix(seed + GoldenGamma) + stream);
        ulong counter = Mix(key);
        return new Xoshiro(
            NextSplitMix(ref counter), NextSplitMix(ref counter), NextSplitMix(ref counter), NextSplitMix(ref counter));
    }

    /// <summary>One step of splitmix64.</summary>
    public static ulong NextSplitMix(ref ulong counter) => Mix(counter = unchecked(counter + GoldenGamma));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ulong Next()
    {
        unchecked
        {
            ulong result = BitOperations.RotateLeft(s1 * 5, 7) * 9;
            ulong shifted = s1 << 17;
            s2 ^= s0;
            s3 ^= s1;
            s1 ^= s2;
            s0 ^= s3;
            s2 ^= shifted;
            s3 = BitOperations.RotateLeft(s3, 45);
            return result;
        }
    }

    /// <summary>One of 2^52 evenly spaced numbers between 0 and 1, both excluded.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double NextOpen() => ((long)(Next() >> 12) + 0.5) * (1.0 / (1L << 52));

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
