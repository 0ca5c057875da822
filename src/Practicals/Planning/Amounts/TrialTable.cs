using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;
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

    /// <summary>Streams from here on are those of what a planned class shares.</summary>
    private const ulong FirstSharedStream = 1UL << 56;

    private const int MostTrials = 8;

    private readonly PlanSettings settings;
    private readonly GroupDrawer[] drawers;
    private readonly GroupBench[] benches;
    private readonly ImpossibleRule impossible;
    private readonly JudgedQuantities judged;
    private readonly QuantityLines[] lines;
    private readonly OddGroups oddGroups;
    private readonly int[][][] lastAt;
    private readonly double[][] rows;
    private readonly bool[] impossibleRows;
    private readonly bool[][] oddRows;
    private readonly MeasuredValue[][] judgedBy;
    private readonly List<SetAside> kinds = [];

    /// <summary>Prepares it.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="tables">What plans have in common.</param>
    /// <param name="gives">Whether the planned table gives a quantity; without the key quantity trials are judged by the change.</param>
    public TrialTable(PlanSettings settings, PlanTables tables, Func<string, bool> gives)
    {
        Practical practical = settings.Practical;
        this.settings = settings;
        drawers = tables.DrawersOf(settings);
        benches = [.. drawers.Select(d => new GroupBench(d))];
        bool keyIsFound = gives(practical.Findings.Key);
        impossible = new ImpossibleRule(practical, tables.Weights, keyIsFound);
        judged = new JudgedQuantities(
            practical, new IdealRun(practical, tables.Weights), keyIsFound ? practical.Findings.Key : practical.Findings.Change, gives);
        lines = [.. judged.All.Select(q => new QuantityLines(practical, q, tables.Weights))];
        string[] readings = [.. practical.Readings.Select(r => r.Id)];
        lastAt = [.. drawers.Select(d => d.Views.Select(view => readings.Select(r => LastOf(view, r)).ToArray()).ToArray())];
        int all = settings.Groups * settings.Trials;
        rows = [.. Enumerable.Range(0, all).Select(_ => new double[readings.Length])];
        impossibleRows = new bool[all];
        oddRows = [.. lines.Select(_ => new bool[all])];
        judgedBy = [.. lines.Select(_ => new MeasuredValue[all])];
        oddGroups = new OddGroups(all);
        Mean = new double[readings.Length];
    }

    /// <summary>The quantity by which trials are judged first.</summary>
    public QuantityLines Judged => lines[0];

    /// <summary>The last weighing of each reading of the group averaged last, by its place in the practical's list, in g.</summary>
    public double[] Mean { get; }

    /// <summary>What leaves trials out of a quantity; the same for all quantities that rest on the same readings.</summary>
    public SetAside LeftOutOf(QuantityDefinition quantity)
    {
        int[] places = [.. Enumerable.Range(0, judged.All.Count).Where(j => judged.SetsAside(j, quantity))];
        SetAside kind = kinds.FirstOrDefault(k => k.Places.SequenceEqual(places)) ?? new SetAside(places, new bool[settings.Groups]);
        if (!kinds.Contains(kind))
        {
            kinds.Add(kind);
        }

        return kind;
    }

    /// <summary>Draws a class.</summary>
    /// <param name="seed">Which of the possible classes.</param>
    /// <param name="number">The class's number.</param>
    public void Draw(ulong seed, int number)
    {
        double[] shared = drawers[0].SharedOf(seed, FirstSharedStream + (ulong)number);
        foreach (GroupBench bench in benches)
        {
            bench.Shared = shared;
        }

        for (int g = 0; g < settings.Groups; g++)
        {
            for (int trial = 0; trial < settings.Trials; trial++)
            {
                DrawTrial(seed, number, g, trial);
            }
        }

        for (int j = 0; j < lines.Length; j++)
        {
            impossibleRows.CopyTo(oddRows[j], 0);
            oddGroups.Mark(judgedBy[j], oddRows[j], lines.Length);
        }
    }

    /// <summary>Averages the group's trials that are not odd. A group with one trial, or with none that is ordinary, takes what it
    /// has, and is odd in the class where that is.</summary>
    /// <param name="group">The group.</param>
    /// <param name="leftOut">What leaves trials out of the quantity for which they are averaged.</param>
    /// <returns>How many trials were averaged.</returns>
    public int Average(int group, SetAside leftOut)
    {
        Span<bool> marks = stackalloc bool[settings.Trials];
        impossibleRows.AsSpan(group * settings.Trials, settings.Trials).CopyTo(marks);
        foreach (int place in leftOut.Places)
        {
            for (int trial = 0; trial < marks.Length; trial++)
            {
                marks[trial] |= oddRows[place][(group * settings.Trials) + trial];
            }
        }

        bool isOdd = leftOut.Odd[group] = !marks.Contains(false);
        int kept = 0;
        Array.Clear(Mean);
        for (int trial = 0; trial < marks.Length; trial++)
        {
            if (marks[trial] && !isOdd)
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
        impossibleRows[row] = impossible.Holds(rows[row], u);
        for (int j = 0; j < lines.Length; j++)
        {
            judgedBy[j][row] = lines[j].Of(rows[row], u);
        }
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

    /// <summary>In which judged quantities an odd trial is left out, and the groups that then have none left.</summary>
    /// <param name="Places">Places of the judged quantities.</param>
    /// <param name="Odd">Whether each group is odd; told when it is averaged.</param>
    public sealed record SetAside(int[] Places, bool[] Odd);
}
