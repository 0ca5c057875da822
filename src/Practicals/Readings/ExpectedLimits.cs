namespace Calx.Practicals.Readings;

/// <summary>What the numbers of an expected column can be, used to notice a heading over the wrong numbers.</summary>
public sealed class ExpectedLimits
{
    /// <summary>Takes limits; null and empty where nothing is known.</summary>
    /// <param name="leastVesselInGrams">The least mass that the vessels on the pan have: for a whole weighing those on
    /// its own pan, for a difference those on the pan of the weighings it was made from.</param>
    /// <param name="mostVesselInGrams">The most mass that those vessels have.</param>
    /// <param name="heavierThan">Ids of readings whose pan holds part of what this one's holds, so that this reading
    /// is the heavier.</param>
    /// <param name="mayBeNegative">Whether a number below zero can be right: a change of mass, a temperature.</param>
    /// <param name="mayLack">Least and most mass of each part that belongs on the pan and is sometimes left off it.</param>
    /// <param name="mostInsideInGrams">More than what is in the vessels can be; null where that is not known.</param>
    /// <param name="step">What the scale of an instrument other than a balance goes by, in its unit.</param>
    public ExpectedLimits(
        decimal? leastVesselInGrams = null,
        decimal? mostVesselInGrams = null,
        IReadOnlyList<string>? heavierThan = null,
        bool mayBeNegative = false,
        decimal? step = null,
        IReadOnlyList<(decimal Low, decimal High)>? mayLack = null,
        decimal? mostInsideInGrams = null)
    {
        MayLack = mayLack ?? [];
        MostInsideInGrams = mostInsideInGrams;
        Step = step;
        LeastVesselInGrams = leastVesselInGrams;
        MostVesselInGrams = mostVesselInGrams;
        HeavierThan = heavierThan ?? [];
        MayBeNegative = mayBeNegative;
    }

    /// <summary>Nothing is known.</summary>
    public static ExpectedLimits None { get; } = new();

    /// <summary>The least mass of the vessels on the pan in g, or null.</summary>
    public decimal? LeastVesselInGrams { get; }

    /// <summary>The most mass of the vessels on the pan in g, or null.</summary>
    public decimal? MostVesselInGrams { get; }

    /// <summary>Ids of readings that are lighter than this one.</summary>
    public IReadOnlyList<string> HeavierThan { get; }

    /// <summary>Least and most mass in g of each part that belongs on the pan and is sometimes left off it.</summary>
    public IReadOnlyList<(decimal Low, decimal High)> MayLack { get; }

    /// <summary>More than what is in the vessels can be, in g, or null.</summary>
    public decimal? MostInsideInGrams { get; }

    /// <summary>What the scale of an instrument other than a balance goes by, in its unit, or null.</summary>
    public decimal? Step { get; }

    /// <summary>Whether a number below zero can be right.</summary>
    public bool MayBeNegative { get; }
}
