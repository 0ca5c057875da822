using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference;

/// <summary>Which answers of a practical can be worked out from the readings and ready-made masses that a table has.</summary>
public sealed class AnswerReach
{
    private readonly Practical practical;
    private readonly RowSpace known;
    private readonly string[] readings;

    /// <summary>Takes what the table has.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="columns">Ids of its readings and ready-made columns.</param>
    public AnswerReach(Practical practical, IEnumerable<string> columns)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(columns);
        this.practical = practical;
        readings = [.. practical.Readings.Select(r => r.Id)];
        known = new RowSpace(readings.Length);
        foreach (string id in columns)
        {
            known.TryAdd(practical.FindColumn(id) is ColumnDefinition column
                ? [.. readings.Select(r => column.Stands.Evaluate(name => name == r ? 1 : 0, _ => 0))]
                : [.. readings.Select(r => r == id ? 1.0 : 0.0)]);
        }
    }

    /// <summary>Whether the answer can be worked out.</summary>
    public bool Gives(AnswerDefinition answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Gives(answer.Formula);
    }

    /// <summary>Whether a reading is there, or follows from what is.</summary>
    public bool Gives(string reading) => known.TryExpress([.. readings.Select(r => r == reading ? 1.0 : 0.0)], out _);

    /// <summary>Ids of all readings that an answer follows from, those of earlier answers too.</summary>
    public static IReadOnlyList<string> ReadingsOf(AnswerDefinition answer, Practical practical)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(practical);
        return [.. answer.Formula.Names.SelectMany(name =>
            practical.AllAnswers.FirstOrDefault(a => a.Id == name) is AnswerDefinition earlier ? ReadingsOf(earlier, practical)
            : CurveOf(name, practical) is SeriesDefinition series ? [series.From, series.To] : [name]).Distinct()];
    }

    /// <summary>The series from whose curve a number is read, or null where it is none of its quantities.</summary>
    private static SeriesDefinition? CurveOf(string name, Practical practical) =>
        practical.Series is SeriesDefinition series && series.Quantities.Any(q => q.Id == name) ? series : null;

    // A curve is drawn where the mass is followed: the loss from its first to its last point is known.
    private bool GivesCurve(SeriesDefinition series) =>
        known.TryExpress([.. readings.Select(r => r == series.To ? -1.0 : r == series.From ? 1.0 : 0.0)], out _);

    // A sum or difference is known when the table's rows give it, whatever becomes of its parts.
    private bool Gives(Expression formula) =>
        (IsSum(formula) && known.TryExpress([.. readings.Select(r => formula.Evaluate(name => name == r ? 1 : 0, _ => 0))], out _))
        || formula switch
        {
            NameTerm name => practical.AllAnswers.FirstOrDefault(a => a.Id == name.Name) is AnswerDefinition earlier ? Gives(earlier.Formula)
                : CurveOf(name.Name, practical) is SeriesDefinition series && GivesCurve(series),
            _ when formula.Children.Count == 0 => true,
            _ => formula.Children.All(Gives),
        };

    private bool IsSum(Expression formula) => formula switch
    {
        NameTerm name => readings.Contains(name.Name),
        Negation => formula.Children.All(IsSum),
        BinaryOperation { Operator: Operator.Add or Operator.Subtract } => formula.Children.All(IsSum),
        _ => false,
    };
}
