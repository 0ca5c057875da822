using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Program;

/// <summary>
/// The numbers in which groups differ, one after another: a parameter that only repeated steps use has one for each
/// round, because no two heatings go alike; every other has one for the whole practical.
/// </summary>
internal sealed class BenchDimensions
{
    private readonly int[] first;
    private readonly bool[] eachRound;

    /// <summary>Lays them out.</summary>
    public BenchDimensions(Practical practical)
    {
        HashSet<string> once = [];
        HashSet<string> repeated = [];
        Collect(practical.Procedure, once, repeated, inRepeat: false);
        foreach (Pan pan in practical.Readings.Select(r => r.Pan))
        {
            once.UnionWith(pan.Minus?.Names ?? []);
        }

        Rounds = practical.Procedure.OfType<RepeatEvent>().Select(r => r.Most).DefaultIfEmpty(0).Max() + 1;
        eachRound = [.. practical.Parameters.Select(p => repeated.Contains(p.Id) && !once.Contains(p.Id))];
        first = new int[eachRound.Length];
        for (int p = 0; p < first.Length; p++)
        {
            first[p] = Count;
            Count += eachRound[p] ? Rounds : 1;
        }
    }

    /// <summary>Rounds for which there are numbers: one more than the practical allows, for what more heating would do.</summary>
    public int Rounds { get; }

    /// <summary>How many numbers a walk needs.</summary>
    public int Count { get; }

    /// <summary>Whether a parameter has a number for each round.</summary>
    public bool IsEachRound(int parameter) => eachRound[parameter];

    /// <summary>Where the number of a parameter stands in a round, from 0.</summary>
    public int IndexOf(int parameter, int round) => eachRound[parameter] ? first[parameter] + round : first[parameter];

    /// <summary>All places of a parameter.</summary>
    public Range RangeOf(int parameter) => first[parameter]..(first[parameter] + (eachRound[parameter] ? Rounds : 1));

    /// <summary>A name for each number: the parameter's id, with the round from 1 behind it where there is one for each.</summary>
    public string[] Names(Practical practical) =>
    [
        .. practical.Parameters.SelectMany((parameter, p) => eachRound[p]
            ? Enumerable.Range(1, Rounds).Select(round => FormattableString.Invariant($"{parameter.Id} {round}"))
            : [parameter.Id]),
    ];

    private static void Collect(
        IReadOnlyList<ProcedureEvent> events, HashSet<string> once, HashSet<string> repeated, bool inRepeat)
    {
        foreach (ProcedureEvent step in events)
        {
            if (step is RepeatEvent repeat)
            {
                Collect(repeat.Do, once, repeated, inRepeat: true);
                continue;
            }

            foreach (Expression formula in step.Formulas)
            {
                (inRepeat ? repeated : once).UnionWith(formula.Names);
            }
        }
    }
}
