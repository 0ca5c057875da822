using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what is asked of the readings: quantities, conclusions and answers.</summary>
internal sealed class QuestionReader(IdTables ids, FaultList faults)
{
    private static readonly Dictionary<string, CarryPolicy> Carries = new(StringComparer.Ordinal)
    {
        ["allowed"] = CarryPolicy.Allowed,
        ["never"] = CarryPolicy.Never,
    };

    private readonly FormulaReader formulas = new(faults);

    public IReadOnlyList<QuantityDefinition> Quantities(FileMap root) => root.Each("quantities", "a quantity", Quantity);

    public IReadOnlyList<ConclusionDefinition> Conclusions(FileMap root) =>
        root.Each("conclusions", "a conclusion", Conclusion);

    public IReadOnlyList<AnswerDefinition> Answers(FileMap root)
    {
        ids.Answers.Order = new EntryOrder((root.Find("answers") as ListNode)?.Items ?? []);
        return root.Each("answers", "an answer", Answer);
    }

    private ConclusionDefinition Conclusion(FileMap map)
    {
        var reader = new ConclusionReader(ids, faults);
        ConclusionTest? test = reader.Test(map);
        return new ConclusionDefinition(
            map.Id("id", ids.Conclusions), map.Text("label"), test, map.Flag("optional"), map.At, reader.Order);
    }

    private QuantityDefinition Quantity(FileMap map) => new(
        map.Id("id", ids.Quantities, inFormulas: true),
        map.Text("label"),
        map.Text("unit"),
        Formula(map, ids.Readings),
        map.At);

    /// <summary>One value that is asked for.</summary>
    public AnswerDefinition Answer(FileMap map)
    {
        // The formula is read before the id is declared: an answer may use earlier answers, never itself.
        Expression formula = ids.Curves.All.Count == 0
            ? Formula(map, ids.Readings, ids.Answers) : Formula(map, ids.Readings, ids.Answers, ids.Curves);
        return new AnswerDefinition(
            map.Id("id", ids.Answers, inFormulas: true),
            map.Text("label"),
            map.Text("unit"),
            formula,
            Marks(map),
            map.Word("carry", Carries, CarryPolicy.Allowed),
            map.At);
    }

    /// <summary>A number is for the method; a map says how many are for what.</summary>
    private static AnswerMarks Marks(FileMap map)
    {
        if (map.Find("marks") is not MapNode)
        {
            return new AnswerMarks(map.Whole("marks", 1), 0, 0, 0);
        }

        FileMap marks = map.Map("marks", "the marks of an answer")!;
        var read = new AnswerMarks(marks.Whole("method", 1), marks.OptionalWhole("accuracy", 0), marks.OptionalWhole("unit", 0), marks.OptionalWhole("figures", 0));
        marks.Close();
        return read;
    }

    private Expression Formula(FileMap map, params IdTable[] names)
    {
        int before = faults.Count;
        Expression formula = map.Formula("formula", names);
        if (map.Find("formula") is ScalarNode written)
        {
            formulas.CheckMolarMasses(written, formula);
            if (formula.Names.Count == 0 && faults.Count == before)
            {
                faults.Add(written.At, "this formula rests on no reading, so no reading could support it");
            }
            else if (faults.Count == before)
            {
                map.HasValue("formula", formula);
            }
        }

        return formula;
    }
}
