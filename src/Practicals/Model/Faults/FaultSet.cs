using System.Numerics;

namespace Calx.Practicals.Model.Faults;

/// <summary>The faults at work in one group, by their places in the practical's list.</summary>
/// <param name="Bits">Bit i is set where the practical's fault i is at work.</param>
public readonly record struct FaultSet(uint Bits)
{
    /// <summary>No fault at work.</summary>
    public static FaultSet None => default;

    /// <summary>How many are at work.</summary>
    public int Count => BitOperations.PopCount(Bits);

    /// <summary>Their places in the practical's list, rising.</summary>
    public IEnumerable<int> Faults
    {
        get
        {
            for (uint rest = Bits; rest != 0; rest &= rest - 1)
            {
                yield return BitOperations.TrailingZeroCount(rest);
            }
        }
    }

    /// <summary>A set of one or more faults.</summary>
    public static FaultSet Of(params ReadOnlySpan<int> faults)
    {
        uint bits = 0;
        foreach (int fault in faults)
        {
            bits |= 1u << fault;
        }

        return new FaultSet(bits);
    }

    /// <summary>Whether a fault is among them.</summary>
    public bool Has(int fault) => (Bits >> fault & 1) != 0;
}
