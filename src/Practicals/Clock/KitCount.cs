using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>How much of one thing a class needs, and how much is put out besides.</summary>
public sealed class KitCount
{
    /// <summary>Spares are enough with this probability.</summary>
    public const double Enough = 0.95;

    private KitCount(KitItem item, double amount, double spare)
    {
        Item = item;
        Amount = amount;
        SpareAmount = spare;
    }

    /// <summary>What it is.</summary>
    public KitItem Item { get; }

    /// <summary>What the class needs, in the item's unit or pieces, without spares.</summary>
    public double Amount { get; }

    /// <summary>What is put out besides.</summary>
    public double SpareAmount { get; }

    /// <summary>Spare pieces; 0 for what is measured out.</summary>
    public int Spare => Item.Need.Unit is null ? (int)SpareAmount : 0;

    /// <summary>The whole.</summary>
    public double Total => Amount + SpareAmount;

    /// <summary>What the class uses up or breaks on average, in the item's unit or pieces: what a lesson costs.</summary>
    public double UsedUp => Item.Need.Unit is null ? Amount * Item.Loss.Breaks : Amount;

    /// <summary>Length in m of what is cut from a coil, spares included, or null where nothing is.</summary>
    /// <param name="gramsPerMetre">Mass of a weighed metre of the stock, above 0; never one from a book.</param>
    public double? LengthInMetres(double gramsPerMetre)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gramsPerMetre);
        return Item.Need.IsCut ? Total / gramsPerMetre : null;
    }

    /// <summary>Counts one thing for a plan.</summary>
    /// <param name="item">The thing.</param>
    /// <param name="settings">The plan.</param>
    public static KitCount Of(KitItem item, PlanSettings settings)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(settings);
        double each = item.Need.IsSample ? settings.SampleInGrams * settings.Trials : item.Need.Number;
        int users = item.Need.Per switch { KitPer.Group => settings.Groups, KitPer.Student => settings.Students, _ => 1 };
        if (item.Need.Unit is not null)
        {
            return new KitCount(item, each * users, each * users * item.Loss.SpareShare);
        }

        int pieces = (int)Math.Ceiling(each * users);
        if (item.Loss.IsOfRoom)
        {
            return new KitCount(item, pieces, 0);
        }

        return new KitCount(item, pieces, Math.Max(SparesFor(pieces, item.Loss.Breaks), Math.Ceiling(pieces * item.Loss.SpareShare)));
    }

    /// <summary>
    /// The fewest spares, at least one, that are enough with <see cref="Enough"/>: the least k of which a binomial number of
    /// breakages among all pieces in use, each breaking with the same probability, is no more.
    /// </summary>
    /// <param name="pieces">Pieces in use, from 0.</param>
    /// <param name="breaks">Probability that one breaks, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static int SparesFor(int pieces, double breaks)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pieces);
        ArgumentOutOfRangeException.ThrowIfNegative(breaks);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(breaks, 1);
        if (breaks is 0 or 1)
        {
            return breaks == 0 ? 1 : Math.Max(1, pieces);
        }

        double probability = Math.Pow(1 - breaks, pieces);
        double cumulative = probability;
        int spares = 0;
        while (cumulative < Enough && spares < pieces)
        {
            probability *= (pieces - spares) / (spares + 1.0) * breaks / (1 - breaks);
            cumulative += probability;
            spares++;
        }

        return Math.Max(1, spares);
    }
}
