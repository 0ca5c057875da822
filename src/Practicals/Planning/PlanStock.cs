using Calx.Practicals.Clock;

namespace Calx.Practicals.Planning;

/// <summary>What is known of a school's stock: a weighed metre of its coil, and prices.</summary>
public sealed class PlanStock
{
    private readonly IReadOnlyDictionary<string, double> prices;

    /// <summary>Takes what is known.</summary>
    /// <param name="gramsPerMetre">Mass in g of a weighed metre of what is cut from a coil, above 0; null where none was weighed.</param>
    /// <param name="prices">By piece of kit: the price of a piece, or of a gram of what is measured out, from 0, in any one currency.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public PlanStock(double? gramsPerMetre, IReadOnlyDictionary<string, double> prices)
    {
        ArgumentNullException.ThrowIfNull(prices);
        if (gramsPerMetre is double grams && !(grams > 0 && double.IsFinite(grams)))
        {
            throw new ArgumentOutOfRangeException(nameof(gramsPerMetre), gramsPerMetre, "A metre weighs more than nothing.");
        }

        if (prices.Values.Any(p => !(p >= 0 && double.IsFinite(p))))
        {
            throw new ArgumentOutOfRangeException(nameof(prices), "Prices are from 0.");
        }

        GramsPerMetre = gramsPerMetre;
        this.prices = prices;
    }

    /// <summary>Nothing is known.</summary>
    public static PlanStock Unknown { get; } = new(null, new Dictionary<string, double>());

    /// <summary>Mass in g of a weighed metre, or null.</summary>
    public double? GramsPerMetre { get; }

    /// <summary>Whether any price is known.</summary>
    public bool HasPrices => prices.Count > 0;

    /// <summary>Length in m of what is cut from a coil, spares included; null where nothing is cut or no metre was weighed.</summary>
    public double? LengthInMetres(KitCount kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return GramsPerMetre is double metre ? kit.LengthInMetres(metre) : null;
    }

    /// <summary>What a lesson costs of one thing on average: what is used up, or breaks; null where its price is not known.</summary>
    public double? CostOf(KitCount kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return prices.TryGetValue(kit.Item.Id, out double price) ? price * kit.UsedUp : null;
    }

    /// <summary>The same of all whose price is known; null where none is.</summary>
    public double? CostOf(IReadOnlyList<KitCount> kit) => HasPrices ? kit.Sum(k => CostOf(k) ?? 0) : null;
}
