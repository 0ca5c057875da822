using Calx.Measurement.Numbers;

namespace Calx.Practicals.Readings;

/// <summary>A row of numbers on its way to a group's readings.</summary>
internal sealed class RawGroup(string name, string? trial, int row)
{
    public string Name { get; } = name;

    public string? Trial { get; } = trial;

    public int Row { get; } = row;

    public List<RawReading> Readings { get; } = [];

    public Dictionary<SaidOfGroup, List<string>> Said { get; } = [];

    public string? First(SaidOfGroup kind) => Said.TryGetValue(kind, out List<string>? texts) ? texts[0] : null;

    public void Say(SaidOfGroup kind, string text)
    {
        if (!Said.TryGetValue(kind, out List<string>? texts))
            Said[kind] = texts = [];
        texts.Add(text);
    }
}

/// <summary>A number that was read, before its decimals have been compared with its column's.</summary>
internal sealed class RawReading(
    ExpectedColumn column, int occurrence, NumberCell.Number number, TableCell written, CellPosition cell)
{
    public ExpectedColumn Column { get; } = column;

    public int Occurrence { get; } = occurrence;

    public string Id { get; } = TakenReading.IdOf(column.Id, occurrence);

    public WrittenNumber Value { get; } = number.Value;

    public decimal LastDigit { get; } = number.LastDigit;

    public TableCell Written { get; } = written;

    public CellPosition Cell { get; } = cell;
}
