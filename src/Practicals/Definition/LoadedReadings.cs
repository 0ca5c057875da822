namespace Calx.Practicals.Definition;

/// <summary>The readings first taken when something has been put into a place that is on their pan: the vessel with its contents, and
/// not the empty one.</summary>
internal static class LoadedReadings
{
    public static IReadOnlySet<string> Of(IReadOnlyList<ReadingDefinition> readings, IReadOnlyList<ProcedureEvent> procedure)
    {
        Dictionary<string, ReadingDefinition> known = readings.ToDictionary(r => r.Id, StringComparer.Ordinal);
        var filled = new HashSet<string>(StringComparer.Ordinal);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var loaded = new HashSet<string>(StringComparer.Ordinal);
        Walk(procedure);
        return loaded;

        void Walk(IReadOnlyList<ProcedureEvent> events)
        {
            foreach (ProcedureEvent step in events)
            {
                switch (step)
                {
                    case AddEvent add: filled.Add(add.To); break;
                    case MoveEvent move: filled.Add(move.To); break;
                    case RepeatEvent repeat: Walk(repeat.Do); break;
                    case ReadEvent read when taken.Add(read.Reading) && known[read.Reading].Pan.Places.Any(filled.Contains):
                        loaded.Add(read.Reading);
                        break;
                }
            }
        }
    }

    /// <summary>Whether a sum of readings is what a vessel holds: loaded readings less those of the empty vessel, and no comparison of
    /// two loaded ones.</summary>
    public static bool IsContents(QuantityDefinition quantity, IReadOnlySet<string> loaded)
    {
        (string Reading, int Sign)[] signs = [.. quantity.Formula.Names.Distinct().Select(r => (r, SignOf(quantity, r)))];
        return signs.Any(s => s.Sign < 0) && signs.All(s => s.Sign > 0 == loaded.Contains(s.Reading));
    }

    /// <summary>Which way a reading counts in a sum: at a whole gram of it, all others at none.</summary>
    private static int SignOf(QuantityDefinition quantity, string reading) =>
        quantity.Formula.Evaluate(other => other == reading ? 1 : 0, _ => 1) is double value && double.IsFinite(value) ? Math.Sign(value) : 0;
}
