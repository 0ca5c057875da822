namespace Calx.Chemistry.Amounts;

/// <summary>
/// What is thought of a hydrate before anything is weighed: every whole number of water molecules per salt up to a limit
/// is as likely as another, for real hydrates do not favour the small ones. A judgement, open to change.
/// </summary>
public sealed class HydratePrior
{
    /// <summary>Greatest number of water molecules considered unless another is given.</summary>
    public const int UsualMostWater = 12;

    /// <summary>States the prior.</summary>
    /// <param name="mostWater">Greatest number of water molecules per formula unit of salt, 1 to 100.</param>
    /// <param name="noneOfThese">Probability, 0 to below 1, that no whole number is right: not all water gone, a loss.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public HydratePrior(int mostWater = UsualMostWater, double noneOfThese = FormulaPrior.UsualNoneOfThese)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mostWater, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(mostWater, 100);
        if (!(noneOfThese >= 0 && noneOfThese < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(noneOfThese), noneOfThese, "0 to below 1 is expected.");
        }

        MostWater = mostWater;
        NoneOfThese = noneOfThese;
    }

    /// <summary>Greatest number of water molecules per formula unit of salt.</summary>
    public int MostWater { get; }

    /// <summary>Prior probability that no whole number is right.</summary>
    public double NoneOfThese { get; }
}
