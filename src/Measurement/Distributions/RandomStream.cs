using System.Diagnostics.CodeAnalysis;

namespace Calx.Measurement.Distributions;

/// <summary>
/// A stream of random numbers fixed by a seed and a stream number: the same integers on every platform, and as many
/// unrelated streams for one seed as there are blocks of work to do side by side. Generator xoshiro256** (Blackman and
/// Vigna 2021), seeded by splitmix64; its period of 2^256 makes overlap of streams a matter of 1e-50. Not for secrets.
/// </summary>
/// <remarks>One stream belongs to one thread at a time.</remarks>
[SuppressMessage("Naming", "CA1711", Justification = "A stream of random numbers is the trade's word; no stream of bytes is meant.")]
public sealed class RandomStream
{
    private Xoshiro generator;

    /// <summary>Starts a stream.</summary>
    /// <param name="seed">What a user may choose and repeat.</param>
    /// <param name="stream">Which of the seed's streams, for instance the number of a block of draws.</param>
    public RandomStream(ulong seed, ulong stream) => generator = Xoshiro.Seeded(seed, stream);

    private RandomStream(Xoshiro generator) => this.generator = generator;

    /// <summary>Starts a stream from a state of the generator, as its authors' test values do.</summary>
    /// <param name="state">Four numbers, not all 0.</param>
    /// <exception cref="ArgumentException">There are not four numbers, or all are 0.</exception>
    public static RandomStream FromState(ReadOnlySpan<ulong> state)
    {
        if (state.Length != 4 || !state.ContainsAnyExcept(0UL))
        {
            throw new ArgumentException("A state is four numbers that are not all 0.", nameof(state));
        }

        return new RandomStream(new Xoshiro(state[0], state[1], state[2], state[3]));
    }

    /// <summary>The next 64 bits, each value equally likely.</summary>
    public ulong NextUInt64() => generator.Next();

    /// <summary>The next of 2^52 evenly spaced numbers between 0 and 1; neither end ever comes.</summary>
    public double NextDouble() => generator.NextOpen();

    /// <summary>The next draw from the normal distribution with mean 0 and standard deviation 1.</summary>
    public double NextNormal() => Ziggurat.Next(ref generator);

    /// <summary>The next whole number from 0 to <paramref name="exclusive"/> − 1, each equally likely, by Lemire's
    /// method (2019, <i>Fast random integer generation in an interval</i>).</summary>
    /// <param name="exclusive">How many values there are, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="exclusive"/> is below 1.</exception>
    public int NextInt(int exclusive)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(exclusive);
        ulong range = (ulong)exclusive;
        ulong unfair = unchecked(0UL - range) % range;
        while (true)
        {
            ulong high = Math.BigMul(generator.Next(), range, out ulong low);
            if (low >= unfair)
            {
                return (int)high;
            }
        }
    }

    /// <summary>Fills with numbers between 0 and 1, as <see cref="NextDouble"/> would give them one by one.</summary>
    public void Fill(Span<double> values)
    {
        Xoshiro local = generator;
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = local.NextOpen();
        }

        generator = local;
    }

    /// <summary>Fills with standard normal draws, as <see cref="NextNormal"/> would give them one by one.</summary>
    public void FillNormal(Span<double> values)
    {
        Xoshiro local = generator;
        for (int i = 0; i < values.Length; i++)
        {
            ulong bits = local.Next();
            if (!Ziggurat.TryQuick(bits, out values[i]))
            {
                // A copy is handed over, so that the state of the loop need not leave the registers.
                Xoshiro copy = local;
                values[i] = Ziggurat.Decide(ref copy, bits);
                local = copy;
            }
        }

        generator = local;
    }

    /// <summary>Puts values in random order, each order equally likely (Fisher and Yates).</summary>
    /// <typeparam name="T">What the values are.</typeparam>
    public void Shuffle<T>(Span<T> values)
    {
        for (int last = values.Length - 1; last > 0; last--)
        {
            int other = NextInt(last + 1);
            (values[last], values[other]) = (values[other], values[last]);
        }
    }
}
