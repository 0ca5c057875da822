using System.Globalization;
using Calx.Measurement.Weighing;
using Calx.Records.Lessons;

namespace Calx.App.Live;

/// <summary>The school's balances by the letter printed on them.</summary>
public sealed class LetteredBalances(IReadOnlyList<KeptBalance> kept)
{
    /// <summary>As they are kept.</summary>
    public IReadOnlyList<KeptBalance> Kept { get; } = kept;

    /// <summary>The balance with a letter, or null where none is known by it.</summary>
    public Balance? Of(string? letter)
    {
        KeptBalance? balance = letter is null ? null : Kept.FirstOrDefault(b => string.Equals(b.Letter, letter, StringComparison.OrdinalIgnoreCase));
        return balance is not null && double.TryParse(balance.Resolution, CultureInfo.InvariantCulture, out double step)
            ? new Balance(step, Balance.UsualRepeatabilityInDivisions) : null;
    }
}
