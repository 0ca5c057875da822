using System.Globalization;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference;

/// <summary>
/// How each reading of a practical is made of unknowns: a part each, a material added each, what was exchanged at each step
/// that changes the contents, and what a gauge is each time it is set. No equation and no completeness is assumed
/// (docs/methods/identifiability.md).
/// </summary>
internal sealed class ReadingRows
{
    private readonly Dictionary<string, double[]> rows = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> unknowns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Dictionary<string, double>> contents = new(StringComparer.Ordinal);
    private readonly HashSet<string> changed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> taken = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> at = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> setTimes = new(StringComparer.Ordinal);
    private readonly List<(string Id, Dictionary<string, double> Row)> named = [];
    private readonly Practical practical;

    /// <summary>Walks the procedure with <paramref name="repeats"/> rounds of each repeated step.</summary>
    public ReadingRows(Practical practical, int repeats)
    {
        this.practical = practical;
        Walk(practical.Procedure, repeats);
        foreach ((string id, Dictionary<string, double> sparse) in named)
        {
            rows[id] = Dense(sparse);
        }

        foreach (ColumnDefinition column in practical.Columns)
        {
            AddColumn(column, repeats);
        }
    }

    /// <summary>How many unknowns there are.</summary>
    public int Width => unknowns.Count;

    /// <summary>The row of a weighing such as <c>after2</c> or of a ready-made column, or null where there is none.</summary>
    public double[]? RowOf(string id) => rows.GetValueOrDefault(id);

    /// <summary>The last weighing of a reading in this walk: what a formula means by the reading's id.</summary>
    public string LastOf(string readingId) => TakenReading.IdOf(readingId, taken.GetValueOrDefault(readingId, 1));

    private void Walk(IReadOnlyList<ProcedureEvent> events, int repeats)
    {
        foreach (ProcedureEvent step in events)
        {
            Take(step, repeats);
        }
    }

    private void Take(ProcedureEvent step, int repeats)
    {
        switch (step)
        {
            case ReadEvent read:
                Read(practical.Reading(read.Reading));
                break;
            case SetEvent set:
                at[set.Gauge] = UnknownOf($"{set.Gauge} set {(setTimes[set.Gauge] = setTimes.GetValueOrDefault(set.Gauge) + 1).ToString(CultureInfo.InvariantCulture)}");
                break;
            case AddEvent add:
                Change(add.To, UnknownOf($"{add.Material} added to {add.To}"), 1);
                break;
            case RepeatEvent repeat:
                for (int round = 0; round < Math.Min(repeats, repeat.Most); round++)
                {
                    Walk(repeat.Do, repeats);
                }

                break;
            default:
                // Whatever it is, it may change what the place holds: reaction, drying, loss, gain.
                changed.UnionWith(step.PlacesChanged);
                break;
        }
    }

    private void Read(ReadingDefinition reading)
    {
        int occurrence = taken[reading.Id] = taken.GetValueOrDefault(reading.Id) + 1;
        string id = TakenReading.IdOf(reading.Id, occurrence);
        var row = new Dictionary<string, double>(StringComparer.Ordinal);
        if (reading.Gauge is string gauge && at.TryGetValue(gauge, out string? shown))
        {
            row[shown] = 1;
        }

        foreach (string part in reading.Pan.Parts)
        {
            row[UnknownOf(part)] = 1;
        }

        foreach (string place in reading.Pan.Places)
        {
            if (changed.Remove(place))
            {
                Change(place, UnknownOf($"exchanged in {place} before {id}"), 1);
            }

            foreach ((string unknown, double share) in contents.GetValueOrDefault(place) ?? [])
            {
                row[unknown] = row.GetValueOrDefault(unknown) + share;
            }
        }

        named.Add((id, row));
    }

    /// <summary>A ready-made column's k-th value stands for its formula with the k-th weighing of the repeated reading.</summary>
    private void AddColumn(ColumnDefinition column, int repeats)
    {
        IReadOnlyList<string> readings = column.Stands.Names;
        for (int occurrence = 1; occurrence <= repeats; occurrence++)
        {
            double[] row = new double[Width];
            bool isRepeat = false;
            foreach (string reading in readings)
            {
                double weight = Coefficient(column.Stands, reading);
                bool repeated = taken.GetValueOrDefault(reading) >= occurrence && occurrence > 1;
                isRepeat |= repeated;
                double[] part = rows[TakenReading.IdOf(reading, repeated ? occurrence : 1)];
                for (int j = 0; j < Width; j++)
                {
                    row[j] += weight * part[j];
                }
            }

            if (occurrence == 1 || isRepeat)
            {
                rows[TakenReading.IdOf(column.Id, occurrence)] = row;
            }
        }
    }

    /// <summary>The factor of one reading in a formula that is a sum of readings.</summary>
    private static double Coefficient(Expression sum, string reading) =>
        sum.Evaluate(name => name == reading ? 1 : 0, _ => 1) - sum.Evaluate(_ => 0, _ => 1);

    private string UnknownOf(string name)
    {
        unknowns.TryAdd(name, unknowns.Count);
        return name;
    }

    private void Change(string place, string unknown, double share)
    {
        if (!contents.TryGetValue(place, out Dictionary<string, double>? held))
        {
            contents[place] = held = new Dictionary<string, double>(StringComparer.Ordinal);
        }

        held[unknown] = held.GetValueOrDefault(unknown) + share;
    }

    private double[] Dense(Dictionary<string, double> sparse)
    {
        double[] row = new double[Width];
        foreach ((string unknown, double share) in sparse)
        {
            row[unknowns[unknown]] = share;
        }

        return row;
    }
}
