using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;

namespace Calx.Practicals.Marking;

/// <summary>Marks the answers of a class to one practical, each student from the own readings. One marker may be used by many threads at once.</summary>
public sealed class Marker
{
    private readonly Dictionary<string, AskedValue> asked;
    private readonly WorkMarker marker;

    /// <summary>Makes a marker.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="policy">How strictly.</param>
    /// <param name="sets">Sets of atomic weights that students may use, the one that the class is told to use first; at least one.</param>
    public Marker(Practical practical, MarkingPolicy policy, IReadOnlyList<AtomicWeights> sets)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(policy);
        ArgumentNullException.ThrowIfNull(sets);
        ArgumentOutOfRangeException.ThrowIfZero(sets.Count, nameof(sets));
        Practical = practical;
        Policy = policy;
        var facts = new MarkingFacts(practical);
        asked = practical.Answers.ToDictionary(a => a.Id, a => new AskedValue(a, facts), StringComparer.Ordinal);
        marker = new WorkMarker(asked, policy, [.. sets.Select(s => (Func<string, double>)new MolarMasses(s).Of)]);
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>How strictly is marked.</summary>
    public MarkingPolicy Policy { get; }

    /// <summary>Marks a class. The order of the students changes no mark.</summary>
    /// <param name="works">What each handed in.</param>
    /// <param name="threads">How many threads; -1 for as many as there are processors. The result is the same for any number.</param>
    public MarkedClass Mark(IReadOnlyList<StudentWork> works, int threads = -1)
    {
        ArgumentNullException.ThrowIfNull(works);
        OwnNumbers[] readings = [.. works.Select(w => new OwnNumbers(w, asked))];
        var marked = new MarkedWork[works.Count];
        Parallel.For(0, works.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => marked[i] = marker.Mark(works[i], i, works, readings));
        return MarkedClass.Of(Practical, marked);
    }
}
