using Calx.Measurement.Numbers;

namespace Calx.Records.Lessons;

/// <summary>What a balance showed with a weight of known mass on its pan.</summary>
public sealed record BalanceCheck
{
    /// <summary>Longest name of who checked, and longest note.</summary>
    public const int LongestText = 200;

    /// <summary>Takes a check.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="balanceId">The balance.</param>
    /// <param name="at">When.</param>
    /// <param name="weight">The mass on the weight's own label, in grams, as written; not below 0 (0 is an empty pan).</param>
    /// <param name="shown">The display in grams, as written.</param>
    /// <param name="by">Who checked.</param>
    /// <param name="note">What else is to be said; may be empty.</param>
    /// <exception cref="ArgumentException">A text is too long or who checked is not said, the weight is below 0, or an id is missing.</exception>
    public BalanceCheck(RecordId id, RecordId balanceId, DateTimeOffset at, WrittenNumber weight, WrittenNumber shown, string by, string note)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(weight.Value, nameof(weight));
        (Id, BalanceId) = (Given.Id(id, nameof(id)), Given.Id(balanceId, nameof(balanceId)));
        (At, Weight, Shown) = (at, weight, shown);
        By = KeptText.Needed(by, LongestText, nameof(by));
        Note = KeptText.MayBeEmpty(note, LongestText, nameof(note));
    }

    /// <summary>Its id.</summary>
    public RecordId Id { get; }

    /// <summary>The balance.</summary>
    public RecordId BalanceId { get; }

    /// <summary>When.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The mass on the weight's own label, in grams.</summary>
    public WrittenNumber Weight { get; }

    /// <summary>The display, in grams.</summary>
    public WrittenNumber Shown { get; }

    /// <summary>Who checked.</summary>
    public string By { get; }

    /// <summary>What else is to be said.</summary>
    public string Note { get; }
}
