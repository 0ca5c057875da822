using System.Globalization;

namespace Calx.Engine.Tests.Measurement.Statistics;

/// <summary>A table of tests/reference: lines of comment start with #, then one line of headings, then rows.</summary>
internal sealed class ReferenceTable
{
    private readonly string[] headings;

    private ReferenceTable(string[] headings, IReadOnlyList<ReferenceRow> rows)
    {
        this.headings = headings;
        Rows = rows;
    }

    public IReadOnlyList<ReferenceRow> Rows { get; }

    public static ReferenceTable Read(string name)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "reference", name);
        string[][] lines = [.. File.ReadLines(path)
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(','))];
        return new ReferenceTable(lines[0], [.. lines.Skip(1).Select(cells => new ReferenceRow(lines[0], cells))]);
    }

    public double[] Column(string heading) =>
        headings.Contains(heading)
            ? [.. Rows.Select(row => row.Number(heading))]
            : throw new ArgumentException($"No column {heading}.", nameof(heading));

    public double[][] Groups(string group, string value) =>
        [.. Rows.GroupBy(row => row.Text(group)).Select(rows => rows.Select(row => row.Number(value)).ToArray())];
}

internal sealed class ReferenceRow(string[] headings, string[] cells)
{
    public string Text(string heading) => cells[Array.IndexOf(headings, heading)];

    public bool Has(string heading) => Text(heading).Length > 0;

    public double Number(string heading) => double.Parse(Text(heading), CultureInfo.InvariantCulture);
}
