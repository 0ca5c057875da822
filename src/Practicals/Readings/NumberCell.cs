using Calx.Measurement.Numbers;

namespace Calx.Practicals.Readings;

/// <summary>What the text of a cell under a column of numbers says.</summary>
public abstract record NumberCell
{
    private NumberCell()
    {
    }

    /// <summary>A number in the column's own unit.</summary>
    /// <param name="Value">The number, its decimals those that were read.</param>
    /// <param name="LastDigit">What one step of its last digit is worth.</param>
    public sealed record Number(WrittenNumber Value, decimal LastDigit) : NumberCell;

    /// <summary>Blank or a dash: there was no reading.</summary>
    public sealed record NoReading : NumberCell;

    /// <summary>Something else.</summary>
    /// <param name="Reason">Why it is no reading and what was expected, without a full stop.</param>
    public sealed record Rejected(string Reason) : NumberCell;
}
