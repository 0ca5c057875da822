using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Faults;

/// <summary>
/// The parameters that a group's own readings tell and no fault sets: amounts put in, and what a gauge is set from (how long,
/// how warm). By their places in the practical's list, rising.
/// </summary>
internal sealed class AmountList
{
    private readonly bool[] isPutIn;

    /// <summary>Finds them.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="circumstances">The laws of the class.</param>
    /// <param name="program">The practical's procedure.</param>
    /// <param name="isFree">Whether no fault sets a parameter.</param>
    public AmountList(Practical practical, Circumstances circumstances, BenchProgram program, Func<int, bool> isFree)
    {
        HashSet<string> added = [.. Flat(practical.Procedure).OfType<AddEvent>().SelectMany(e => e.Mass.Names)];
        HashSet<string> shown = [.. Flat(practical.Procedure).OfType<SetEvent>().SelectMany(e => e.To.Names)];
        Parameters = [.. Enumerable.Range(0, practical.Parameters.Count).Where(p => isFree(p) && (IsPutIn(p) || IsSet(p)))];
        isPutIn = [.. Parameters.Select(IsPutIn)];
        ShownBy = [.. Parameters.Select(p => isPutIn[Parameters.IndexOf(p)] ? null : ReadingOf(practical, practical.Parameters[p].Id))];
        HasGauges = !Array.TrueForAll(isPutIn, put => put);
        Program = program;

        bool IsPutIn(int p) => added.Contains(practical.Parameters[p].Id);

        bool IsSet(int p) => shown.Contains(practical.Parameters[p].Id) && circumstances.LawOf(p) is not ParameterLaw.Fixed;
    }

    /// <summary>Their places.</summary>
    public List<int> Parameters { get; }

    /// <summary>For each the reading that shows just it, or null.</summary>
    public IReadOnlyList<string?> ShownBy { get; }

    /// <summary>Whether any of them is no mass put in.</summary>
    public bool HasGauges { get; }

    private BenchProgram Program { get; }

    /// <summary>How many there are.</summary>
    public int Count => Parameters.Count;

    /// <summary>Whether one is a mass that is put in, and so above 0.</summary>
    public bool IsPutIn(int amount) => isPutIn[amount];

    /// <summary>The amount that a number made of the readings follows, or -1: the first by a tenth more of which the number
    /// changes by more than a hundredth.</summary>
    /// <param name="medians">A number for each of the program's dimensions.</param>
    /// <param name="number">The number, from what a walk of one round reads without the parts.</param>
    public int Followed(ReadOnlySpan<double> medians, Func<double[], double> number)
    {
        double[] values = medians.ToArray();
        double usual = Walked(values);
        for (int a = 0; a < Count; a++)
        {
            Range range = Program.Dimensions.RangeOf(Parameters[a]);
            double middle = values[range.Start];
            values.AsSpan(range).Fill(1.1 * middle);
            bool follows = Math.Abs(Walked(values) - usual) > 0.01 * Math.Abs(usual);
            values.AsSpan(range).Fill(middle);
            if (follows)
            {
                return a;
            }
        }

        return -1;

        double Walked(double[] walk)
        {
            double[] read = new double[Program.Weighings(rounds: 1).Count];
            Program.Walk(walk, rounds: 1, Program.NewState(), read);
            return number(read);
        }
    }

    /// <summary>The reading taken while its gauge stands at just this parameter.</summary>
    private static string? ReadingOf(Practical practical, string parameter)
    {
        var at = new Dictionary<string, bool>(StringComparer.Ordinal);
        foreach (ProcedureEvent step in Flat(practical.Procedure))
        {
            if (step is SetEvent set)
            {
                at[set.Gauge] = set.To is NameTerm name && name.Name == parameter;
            }
            else if (step is ReadEvent read && practical.Reading(read.Reading).Gauge is string gauge && at.GetValueOrDefault(gauge))
            {
                return read.Reading;
            }
        }

        return null;
    }

    private static IEnumerable<ProcedureEvent> Flat(IReadOnlyList<ProcedureEvent> events) =>
        events.SelectMany(e => e is RepeatEvent repeat ? Flat(repeat.Do) : [e]);
}
