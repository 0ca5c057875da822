using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Planning.Amounts;

/// <summary>
/// The results table of one planned class, drawn anew for class after class: for every trial of every group the last weighing of
/// each reading, with the odd trials marked. One belongs to one thread.
/// </summary>
internal sealed class TrialTable
{
    /// <summary>Streams of random numbers from here on are those of planned classes.</summary>
    private const ulong FirstStream = 1UL << 48;

    private const int MostTrials = 8;

    private readonly PlanSettings settings;
    private readonly GroupDrawer[] drawers;
    private readonly GroupBench[] benches;
    private readonly ImpossibleRule impossible;
    private readonly OddGroups oddGroups;
    private readonly int[][][] lastAt;
    private readonly double[][] rows;
    private readonly bool[] oddRows;
    private readonly MeasuredValue[] judgedBy;

    /// <summary>Prepares it.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="tables">What plans have in common.</param>
    /// <param name="keyIsFound">Whether the planned table gives the key quantity; otherwise trials are judged by the change.</param>
    public TrialTable(PlanSettings settings, PlanTables tables, bool keyIsFound)
    {
        Practical practical = settings.Practical;
        this.settings = settings;
        drawers = tables.DrawersOf(settings);
        benches = [.. drawers.Select(d => new GroupBench(d))];
        impossible = new ImpossibleRule(practical, tables.Weights, keyIsFound);
        string judge = keyIsFound ? practical.Findings.Key : practical.Findings.Change;
        Judged = new QuantityLines(practical, practical.Quantities.First(q => q.Id == judge), tables.Weights);
        string[] readings = [.. practical.Readings.Select(r => r.Id)];
        lastAt = [.. drawers.Select(d => d.Views.Select(view => readings.Select(r => LastOf(view, r)).ToArray()).ToArray())];
        int all = settings.Groups * settings.Trials;
        rows = [.. Enumerable.Range(0, all).Select(_ => new double[readings.Length])];
        (oddRows, judgedBy) = (new bool[all], new MeasuredValue[all]);
        oddGroups = new OddGroups(all);
        Mean = new double[readings.Length];
        Odd = new bool[settings.Groups];
    }

    /// <summary>The quantity by which trials are judged.</summary>
    public QuantityLines Judged { get; }

    /// <summary>The last weighing of each reading of the group averaged last, by its place in the practical's list, in g.</summary>
    public double[] Mean { get; }

    /// <summary>Whether each group is odd.</summary>
    public bool[] Odd { get; }

    /// <summary>Draws a class.</summary>
    /// <param name="seed">Which of the possible classes.</param>
    /// <param name="number">The class's number.</param>
    public void Draw(ulong seed, int number)
    {
        for (int g = 0; g < settings.Groups; g++)
        {
            for (int trial = 0; trial < settings.Trials; trial++)
            {
                DrawTrial(seed, number, g, trial);
            }
        }

        oddGroups.Mark(judgedBy, oddRows);
    }

    /// <summary>Averages the group's trials that are not odd. A group with one trial, or with none that is ordinary, takes what it
    /// has, and is odd in the class where that is.</summary>
    /// <returns>How many trials were averaged.</returns>
    public int Average(int group)
    {
        Span<bool> marks = oddRows.AsSpan(group * settings.Trials, settings.Trials);
        Odd[group] = !marks.Contains(false);
        int kept = 0;
        Array.Clear(Mean);
        for (int trial = 0; trial < marks.Length; trial++)
        {
            if (marks[trial] && !Odd[group])
            {
                continue;
            }

            kept++;
            double[] row = rows[(group * settings.Trials) + trial];
            for (int r = 0; r < Mean.Length; r++)
            {
                Mean[r] += row[r];
            }
        }

        for (int r = 0; r < Mean.Length; r++)
        {
            Mean[r] /= kept;
        }

        return kept;
    }

    private void DrawTrial(ulong seed, int number, int group, int trial)
    {
        int at = group % drawers.Length;
        ulong stream = FirstStream + ((ulong)number * PlanSettings.MostGroups * MostTrials) + (ulong)((group * MostTrials) + trial);
        var random = new RandomStream(seed, stream);
        while (!benches[at].Draw(drawers[at].NextSet(random), random))
        {
            // The bench has no answer to some numbers, such as nothing over nothing: another group takes its place.
        }

        int row = (group * settings.Trials) + trial;
        int[] places = lastAt[at][benches[at].View.Rounds - 1];
        for (int r = 0; r < places.Length; r++)
        {
            rows[row][r] = places[r] < 0 ? 0 : benches[at].WrittenValue(places[r]);
        }

        double u = settings.Balances[at].ReadingStandardUncertainty();
        oddRows[row] = impossible.Holds(rows[row], u);
        judgedBy[row] = Judged.Of(rows[row], u);
    }

    private static int LastOf(RoundsView view, string reading)
    {
        int found = -1;
        for (int i = 0; i < view.Weighings.Count; i++)
        {
            found = view.Weighings[i].Reading == reading ? i : found;
        }

        return found;
    }
}
