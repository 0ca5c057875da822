using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>Which of a practical's quantities a table with certain readings determines, and what the others lack
/// (docs/methods/identifiability.md).</summary>
public sealed class Identifiability
{
    private Identifiability(IReadOnlyList<QuantityDefinition> determined, IReadOnlyList<MissingReadings> undetermined)
    {
        Determined = determined;
        Undetermined = undetermined;
    }

    /// <summary>Quantities that the readings determine, in the practical's order.</summary>
    public IReadOnlyList<QuantityDefinition> Determined { get; }

    /// <summary>The others, each with the readings it lacks.</summary>
    public IReadOnlyList<MissingReadings> Undetermined { get; }

    /// <summary>Decides it for a table.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="readingIds">Readings in the table, such as <c>empty</c>, <c>before</c>, <c>after</c>, <c>after2</c>.</param>
    /// <param name="columnIds">Ready-made columns in the table; may be empty.</param>
    /// <param name="language">The language of the reasons; British where nothing else is said.</param>
    public static Identifiability Of(
        Practical practical, IReadOnlyCollection<string> readingIds, IReadOnlyCollection<string> columnIds, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(readingIds);
        ArgumentNullException.ThrowIfNull(columnIds);
        var table = new Table(practical, readingIds, columnIds);
        ReadingPattern pattern = table.With([]);
        var determined = new List<QuantityDefinition>();
        var undetermined = new List<MissingReadings>();
        foreach (QuantityDefinition quantity in practical.Quantities)
        {
            var program = new QuantityProgram(quantity.Formula);
            if (pattern.Determines(program))
            {
                determined.Add(quantity);
            }
            else
            {
                undetermined.Add(new MissingReadings(quantity, table.FewestThatDetermine(program), language ?? EngineLanguage.British));
            }
        }

        return new Identifiability(determined, undetermined);
    }

    private sealed class Table(
        Practical practical, IReadOnlyCollection<string> readingIds, IReadOnlyCollection<string> columnIds)
    {
        private readonly ReadingDefinition[] absent =
            [.. practical.Readings.Where(r => !readingIds.Contains(r.Id))];

        public ReadingPattern With(IEnumerable<ReadingDefinition> more)
        {
            string[] ids = [.. readingIds.Concat(more.Select(r => r.Id))];
            return new ReadingPattern(practical, ids, columnIds, Repeats.Implied(practical, ids.Concat(columnIds)));
        }

        /// <summary>Sets of one, then two, ... readings, each size in the practical's order; a practical has few.</summary>
        public ReadingDefinition[] FewestThatDetermine(QuantityProgram program)
        {
            for (int size = 1; size <= absent.Length; size++)
            {
                foreach (ReadingDefinition[] more in Choose(size, from: 0))
                {
                    if (With(more).Determines(program))
                    {
                        return more;
                    }
                }
            }

            return [];
        }

        private IEnumerable<ReadingDefinition[]> Choose(int size, int from)
        {
            if (size == 0)
            {
                return [[]];
            }

            return Enumerable.Range(from, absent.Length - from)
                .SelectMany(first => Choose(size - 1, first + 1).Select(rest => (ReadingDefinition[])[absent[first], .. rest]));
        }
    }
}
