using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Adjusted;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Judging;
using Calx.Practicals.Marking.Prose;
using Calx.Practicals.Marking.Values;

namespace Calx.Practicals.Marking;

/// <summary>Marks the answers of a class to one practical, each student from the own readings. One marker may be used by many threads at once.</summary>
public sealed class Marker
{
    private readonly Dictionary<string, AskedValue> values;
    private readonly IReadOnlyList<Func<string, double>> sets;
    private readonly JudgingFacts facts;
    private readonly MeasurementWords words;
    private readonly HashSet<string>? asked;

    /// <summary>Makes a marker.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="policy">How strictly.</param>
    /// <param name="sets">Sets of atomic weights that students may use, the one that the class is told to use first; at least one.</param>
    /// <param name="asked">Ids of the answers and of the questions in words that were asked. Null for those on the sheet that are values, and all others that
    /// somebody in the class answered.</param>
    public Marker(Practical practical, MarkingPolicy policy, IReadOnlyList<AtomicWeights> sets, IReadOnlyCollection<string>? asked = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(policy);
        ArgumentNullException.ThrowIfNull(sets);
        ArgumentOutOfRangeException.ThrowIfZero(sets.Count, nameof(sets));
        Practical = practical;
        Policy = policy;
        var known = new MarkingFacts(practical);
        values = practical.AllAnswers.OfType<AnswerDefinition>().ToDictionary(a => a.Id, a => new AskedValue(a, known), StringComparer.Ordinal);
        this.sets = [.. sets.Select(s => (Func<string, double>)new MolarMasses(s).Of)];
        facts = new JudgingFacts(practical, sets[0]);
        words = MeasurementWords.Of(practical);
        this.asked = asked?.ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>How strictly is marked.</summary>
    public MarkingPolicy Policy { get; }

    /// <summary>Marks a class. The order of the students changes no mark.</summary>
    /// <param name="works">What each handed in.</param>
    /// <param name="overrulings">The teacher's own marks; of several for one answer the last counts.</param>
    /// <param name="threads">How many threads; -1 for as many as there are processors. The result is the same for any number.</param>
    public MarkedClass Mark(IReadOnlyList<StudentWork> works, IReadOnlyList<Overruling>? overrulings = null, int threads = -1)
    {
        ArgumentNullException.ThrowIfNull(works);
        AskedAnswer[] answers = [.. Practical.AllAnswers.Where(a => IsAsked(a.Id, works, always: a is AnswerDefinition value && Practical.Answers.Contains(value)))];
        SheetQuestion[] questions = [.. Practical.Sheet.Questions.Where(q => IsAsked(q.Id, works, always: false))];
        var teacher = TeachersMarks.Of(overrulings ?? [], works, answers, questions, Practical.Sheet.Questions);
        OwnNumbers[] readings = [.. works.Select(w => new OwnNumbers(w, values, facts.Practical))];
        var groups = new Lazy<OddGroupsOfClass>(() => new OddGroupsOfClass(works, readings, facts));
        var marker = new WorkMarker(values, answers, Policy, sets, facts, groups);
        var marked = new MarkedWork[works.Count];
        Parallel.For(0, works.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, i =>
        {
            IReadOnlyDictionary<string, Overruling> given = teacher.Of(works[i].Student);
            marked[i] = MarkedWork.From(
                works[i], marker.Mark(i, works, readings), [.. questions.Select(q => ProseMark.From(q, works[i].Answer(q.Id), words, given.GetValueOrDefault(q.Id)))], given);
        });
        return MarkedClass.Of(answers, marked, new AdjustedLooks(facts, values).Of(marked, readings), teacher.Left);
    }

    private bool IsAsked(string id, IReadOnlyList<StudentWork> works, bool always) =>
        asked?.Contains(id) ?? (always || works.Any(w => w.Answer(id).Length > 0));
}
