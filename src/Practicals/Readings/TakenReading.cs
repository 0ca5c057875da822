using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Practicals.Readings;

/// <summary>
/// One reading that a group took, or one ready-made mass of a column (tared, or already subtracted): the number as
/// written, in the unit of the practical's reading, and where it was found.
/// </summary>
public sealed class TakenReading
{
    /// <summary>Takes a reading.</summary>
    /// <param name="baseId">Id of the practical's reading or column, for example <c>after</c>.</param>
    /// <param name="occurrence">1 for the first time it was taken, 2 for the repeat, and so on.</param>
    /// <param name="value">The number in <paramref name="unit"/>; its decimals are those that were read.</param>
    /// <param name="unit">Unit of <paramref name="value"/>: that of the practical's reading, g for a mass.</param>
    /// <param name="asWritten">The text of the cell, where it is not just the number; null takes the number.</param>
    /// <param name="cell">Where it stands in a file; null for a reading typed in a lesson.</param>
    /// <param name="balance">The balance's letter where it was recorded with the reading, else null.</param>
    /// <param name="lastDigit">What one step of the last digit read is worth, in <paramref name="unit"/>; null takes it
    /// from the decimals. It is more than 1 where kilograms were written with few decimals.</param>
    /// <exception cref="ArgumentException"><paramref name="baseId"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="occurrence"/> is below 1.</exception>
    public TakenReading(
        string baseId,
        int occurrence,
        WrittenNumber value,
        string unit = "g",
        string? asWritten = null,
        CellPosition? cell = null,
        string? balance = null,
        decimal? lastDigit = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(baseId);
        ArgumentOutOfRangeException.ThrowIfLessThan(occurrence, 1);
        ArgumentNullException.ThrowIfNull(unit);
        BaseId = baseId;
        Occurrence = occurrence;
        Value = value;
        Unit = unit;
        AsWritten = asWritten ?? value.ToString();
        Cell = cell;
        Balance = balance;
        LastDigit = lastDigit ?? new decimal(1, 0, 0, false, (byte)value.Decimals);
    }

    /// <summary>Id of this weighing: <c>after</c>, then <c>after2</c>, <c>after3</c>.</summary>
    public string Id => IdOf(BaseId, Occurrence);

    /// <summary>Id of the practical's reading or column.</summary>
    public string BaseId { get; }

    /// <summary>1 for the first time it was taken, 2 for the repeat, and so on.</summary>
    public int Occurrence { get; }

    /// <summary>The number in <see cref="Unit"/>, with the decimals that were read.</summary>
    public WrittenNumber Value { get; }

    /// <summary>Unit of <see cref="Value"/>; g for a mass.</summary>
    public string Unit { get; }

    /// <summary>The text as the person wrote it, unit and comma included.</summary>
    public string AsWritten { get; }

    /// <summary>Where it stands in a file; null for a reading typed in a lesson.</summary>
    public CellPosition? Cell { get; }

    /// <summary>The balance's letter where it was recorded with the reading, else null.</summary>
    public string? Balance { get; }

    /// <summary>What one step of the last digit read is worth, in <see cref="Unit"/>: 0.01 for 24.31.</summary>
    public decimal LastDigit { get; }

    /// <summary>Id of a weighing: the base id, from the second on with its number behind it.</summary>
    public static string IdOf(string baseId, int occurrence) =>
        occurrence == 1 ? baseId : baseId + occurrence.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether an id is that of a weighing of a reading: the base id, or that with a number behind it.</summary>
    public static bool IsOf(string baseId, string id)
    {
        ArgumentNullException.ThrowIfNull(baseId);
        ArgumentNullException.ThrowIfNull(id);
        return id == baseId || (id.StartsWith(baseId, StringComparison.Ordinal)
            && int.TryParse(id.AsSpan(baseId.Length), NumberStyles.None, CultureInfo.InvariantCulture, out _));
    }

    /// <summary>The id and the number, for a message.</summary>
    public override string ToString() => $"{Id} {Value} {Unit}";
}
