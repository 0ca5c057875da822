using System.Globalization;

namespace Calx.Papers.Plans;

/// <summary>How much of a thing, as it is written on a list.</summary>
internal static class KitAmount
{
    /// <summary>Pieces as they are; what is measured out to three figures, rounded up, so that nothing runs short.</summary>
    public static string Of(double amount)
    {
        if (amount == 0 || (amount == Math.Floor(amount) && amount < 1e6))
        {
            return amount.ToString("F0", CultureInfo.InvariantCulture);
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(amount)) - 2);
        return (Math.Ceiling((amount / step) - 1e-9) * step).ToString("0.########", CultureInfo.InvariantCulture);
    }
}
