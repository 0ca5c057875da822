using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what may be asked beyond the students' sheet: more values, and judgements.</summary>
/// <param name="faults">Receives what is wrong.</param>
/// <param name="questions">Reads values and marks.</param>
/// <param name="sheet">The answers on the sheet.</param>
/// <param name="findings">What the class is judged on.</param>
internal sealed class FurtherAnswerReader(
    IdTables ids, FaultList faults, QuestionReader questions, IReadOnlyList<AnswerDefinition> sheet, FindingsDefinition findings)
{
    private static readonly Dictionary<string, Kind> Kinds = new(StringComparer.Ordinal)
    {
        ["value"] = Kind.Value,
        ["formula"] = Kind.Formula,
        ["complete"] = Kind.Completeness,
        ["odd-group"] = Kind.OddGroup,
        ["cause"] = Kind.Cause,
        ["improvement"] = Kind.Improvement,
    };

    /// <summary>1 : 1, 1 : 2 and 2 : 1 are what a lesson's readings can tell apart. Judgement.</summary>
    private const int UsualSimple = 2;

    private readonly FormulaReader formulas = new(faults);
    private readonly List<AskedAnswer> read = [.. sheet];

    private enum Kind
    {
        Value,
        Formula,
        Completeness,
        OddGroup,
        Cause,
        Improvement,
    }

    public IReadOnlyList<AskedAnswer> Read(FileMap root) => [.. root.Each("further", "a further answer", Further, needed: false).OfType<AskedAnswer>()];

    private AskedAnswer? Further(FileMap map)
    {
        AskedAnswer? answer = map.Word("kind", Kinds) is var kind && kind == Kind.Value ? questions.Answer(map) : Judgement(kind, map);
        if (answer is not null)
        {
            read.Add(answer);
        }

        return answer;
    }

    private JudgementAnswer? Judgement(Kind kind, FileMap map)
    {
        string label = map.Text("label"), ask = map.Text("ask");
        int marks = map.Whole("marks", 1);
        return kind switch
        {
            Kind.Formula => OfFormula(map, label, ask, marks),
            Kind.Completeness => new JudgementAnswer.OfCompleteness(Id(map), label, ask, marks, findings.ConstantMass, map.At),
            Kind.OddGroup => new JudgementAnswer.OfOddGroup(Id(map), label, ask, marks, map.At),
            Kind.Cause => OfCause(map, label, ask, marks),
            _ => OfImprovement(map, label, ask, marks),
        };
    }

    private JudgementAnswer.OfCause? OfCause(FileMap map, string label, string ask, int marks)
    {
        AnswerDefinition? value = Earlier<AnswerDefinition>(map, "value", "a value");
        string id = Id(map);
        return value is null ? null : new JudgementAnswer.OfCause(id, label, ask, marks, value, map.At);
    }

    private JudgementAnswer.OfImprovement? OfImprovement(FileMap map, string label, string ask, int marks)
    {
        JudgementAnswer.OfCause? cause = Earlier<JudgementAnswer.OfCause>(map, "for", "an answer of the kind cause");
        string id = Id(map);
        return cause is null ? null : new JudgementAnswer.OfImprovement(id, label, ask, marks, cause, map.At);
    }

    private JudgementAnswer.OfFormula? OfFormula(FileMap map, string label, string ask, int marks)
    {
        AnswerDefinition? ratio = Earlier<AnswerDefinition>(map, "ratio", "a value");
        Formula first = formulas.Needed(map, "first"), second = formulas.Needed(map, "second"), accepted = formulas.Needed(map, "accepted");
        int simple = map.Find("simple") is FileNode node ? map.WholeOf(node, 1) : UsualSimple;
        string id = Id(map);
        if (accepted.Composition.Count != 2 || !new[] { first, second }.All(f => f.Composition is [{ Count: 1 } one] && accepted.CountOf(one.Element) > 0))
        {
            faults.Add(map.At, "the accepted formula is not one of the elements 'first' and 'second'; expected, for example, first: Mg, second: O, accepted: MgO");
        }

        return ratio is null ? null : new JudgementAnswer.OfFormula(id, label, ask, marks, ratio, first, second, accepted, simple, map.At);
    }

    private T? Earlier<T>(FileMap map, string key, string expected)
        where T : AskedAnswer
    {
        string id = map.Reference(key, ids.Answers);
        AskedAnswer? found = read.Find(a => a.Id == id);
        if (found is not null and not T && map.Find(key) is FileNode node)
        {
            faults.Add(node.At, $"'{id}' is no {expected[(expected.IndexOf(' ', StringComparison.Ordinal) + 1)..]}; the id of {expected} was expected");
        }

        return found as T;
    }

    private string Id(FileMap map) => map.Id("id", ids.Answers, inFormulas: true);
}
