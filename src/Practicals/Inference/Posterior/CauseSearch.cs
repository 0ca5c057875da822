using System.Buffers;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Slips;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Finds every way in which a group's readings may have come about, with its weight: first all points, then each slip of
/// the pen and each missing part on top of the points with at most one other fault (docs/methods/causes.md).
/// </summary>
internal sealed class CauseSearch
{
    /// <summary>Points of a block that are tried under each slip and each missing part: a slip leaves so little else open
    /// that these are enough, but at a second look.</summary>
    private const int PointsUnderSlip = 128;

    /// <summary>Every so many of them are looked at first, to see whether a slip or a missing part is worth all.</summary>
    private const int Stride = 8;

    /// <summary>How much deeper than <see cref="AtomList.Depth"/> the first look goes, for what it may have missed.</summary>
    private const double Margin = 6;

    /// <summary>Share of slips that follow no rule, and how widely they scatter in g: a wrong row copied, say (judgement).</summary>
    private const double ShareWithoutRule = 0.02;
    private const double SpreadWithoutRule = 30;

    private readonly HiddenGroups hidden;
    private readonly GroupProblem problem;
    private readonly PointFit fit;
    private readonly AtomList atoms = new();
    private readonly ThinBlock[] few;
    private readonly double[] logs;
    private readonly double[] pulls;
    private readonly double[] precisions;

    private CauseSearch(HiddenGroups hidden, GroupProblem problem)
    {
        this.hidden = hidden;
        this.problem = problem;
        fit = new PointFit(problem.View.Table, problem.Unknowns, problem.Rows);
        int underSlip = hidden.AreFiner ? HiddenGroups.TimesFiner * PointsUnderSlip : PointsUnderSlip;
        few =
        [
            .. hidden.Blocks.Where(b => b.Set.Count < FaultPrior.MostAtOnce)
                .Select(b => new ThinBlock(b.Set, b.First, Math.Min(b.Count, b.Set.Count == 0 ? 2 * underSlip : underSlip))),
        ];
        // Large and short-lived: lent, so that a class of groups leaves nothing to clear away.
        logs = ArrayPool<double>.Shared.Rent(hidden.Count);
        int reach = few.Max(b => b.First + b.Count);
        pulls = ArrayPool<double>.Shared.Rent(Math.Max(1, reach * problem.Rows.Length));
        precisions = ArrayPool<double>.Shared.Rent(Math.Max(1, reach * problem.Rows.Length));
    }

    /// <summary>Searches.</summary>
    public static IReadOnlyList<Atom> Of(HiddenGroups hidden, GroupProblem problem)
    {
        var search = new CauseSearch(hidden, problem);
        search.Points();
        for (int fault = 0; fault < hidden.Circumstances.Practical.Faults.Count; fault++)
        {
            bool special = hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Pen or FaultEffect.Off;
            if (special && search.problem.Rows.All(r => !r.IsReading))
            {
                search.Untold(fault);
            }
            else if (hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Pen)
            {
                search.Slips(fault);
                search.Unreadable(fault);
            }
            else if (hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Off)
            {
                search.PartsOff(fault);
            }
        }

        search.KeepPoints();
        search.GiveBack();
        return search.atoms.Heavy();
    }

    private void GiveBack()
    {
        ArrayPool<double>.Shared.Return(logs);
        ArrayPool<double>.Shared.Return(pulls);
        ArrayPool<double>.Shared.Return(precisions);
    }

    private int RowCount => problem.Rows.Length;

    private void Points()
    {
        foreach (HiddenBlock block in hidden.Blocks)
        {
            int needed = block.First + (few.FirstOrDefault(f => f.First == block.First)?.Count ?? 0);
            for (int point = block.First; point < block.First + block.Count; point++)
            {
                fit.Fit(point, problem.Grams);
                logs[point] = fit.LogEvidence;
                atoms.Note(fit.LogEvidence + block.LogWeight);
                for (int i = 0; point < needed && i < RowCount; i++)
                {
                    pulls[(point * RowCount) + i] = fit.Pulls[i];
                    precisions[(point * RowCount) + i] = fit.Precision(i, i);
                }
            }
        }
    }

    private void KeepPoints()
    {
        foreach (HiddenBlock block in hidden.Blocks)
        {
            for (int point = block.First; point < block.First + block.Count; point++)
            {
                if (logs[point] + block.LogWeight >= atoms.Least)
                {
                    atoms.Add(new Atom(point, block.Set, null), logs[point] + block.LogWeight);
                }
            }
        }
    }

    /// <summary>A displayed number other than the written one moves a residual: the logarithm is a parabola in the move.</summary>
    private void Slips(int fault)
    {
        int written = problem.Rows.Count(r => r.IsReading);
        var open = new List<(Disturbance.Slip Slip, double Move, double Best)>();
        for (int row = 0; row < RowCount; row++)
        {
            foreach (SlipCandidate candidate in problem.Slips[row])
            {
                double shown = candidate.Displayed.AsDouble;
                double share = Math.Log((1 - ShareWithoutRule) * candidate.Probability / written);
                var slip = new Disturbance.Slip(fault, row, shown, candidate.Displayed.ToString(), share);
                double move = shown - problem.Rows[row].Grams;
                double best = Best(row, move, fault) + share;
                atoms.Note(best);
                open.Add((slip, move, best));
            }
        }

        foreach ((Disturbance.Slip slip, double move, double best) in open)
        {
            if (best >= atoms.Least - Margin)
            {
                AddSlip(slip, move);
            }
        }
    }

    private double Best(int row, double move, int fault)
    {
        double best = double.NegativeInfinity;
        foreach (ThinBlock block in few)
        {
            double weight = WeightWith(block, fault);
            for (int point = block.First; point < block.First + block.Count; point += Stride)
            {
                best = Math.Max(best, weight + Moved(point, row, move));
            }
        }

        return best;
    }

    private void AddSlip(Disturbance.Slip slip, double move)
    {
        foreach (ThinBlock block in few)
        {
            double weight = WeightWith(block, slip.Fault) + slip.LogShare;
            for (int point = block.First; point < block.First + block.Count; point++)
            {
                double log = weight + Moved(point, slip.Row, move);
                if (log >= atoms.Least)
                {
                    atoms.Add(new Atom(point, block.Set, slip), log);
                }
            }
        }
    }

    private double Moved(int point, int row, double move)
    {
        int at = (point * RowCount) + row;
        return logs[point] - (move * (pulls[at] + (0.5 * move * precisions[at])));
    }

    /// <summary>Before anything is written down a slip is as probable as ever, and will count.</summary>
    private void Untold(int fault)
    {
        foreach (ThinBlock block in few)
        {
            for (int point = block.First; point < block.First + block.Count; point++)
            {
                atoms.Add(new Atom(point, block.Set, new Disturbance.Untold(fault)), WeightWith(block, fault) + logs[point]);
            }
        }
    }

    /// <summary>One or two numbers left aside: what the others say of them is taken out of the evidence.</summary>
    private void Unreadable(int fault)
    {
        int[] rows = [.. Enumerable.Range(0, RowCount).Where(i => problem.Rows[i].IsReading)];
        double spread = Math.Log(SpreadWithoutRule);
        ThinBlock none = few[0];
        double rate = hidden.Prior.Sets.FirstOrDefault(s => s.Set == FaultSet.Of(fault)).Probability;
        foreach (int row in rows)
        {
            double share = Math.Log(ShareWithoutRule / rows.Length) - spread;
            foreach (ThinBlock block in few)
            {
                double weight = WeightWith(block, fault) + share;
                for (int point = block.First; point < block.First + block.Count; point++)
                {
                    int at = (point * RowCount) + row;
                    double without = logs[point] + (0.5 * pulls[at] * pulls[at] / precisions[at]) + (0.5 * Math.Log(2 * Math.PI / precisions[at]));
                    if (weight + without >= atoms.Least)
                    {
                        atoms.Add(new Atom(point, block.Set, new Disturbance.Unreadable(fault, row, row)), weight + without);
                    }
                }
            }

            foreach (int other in rows.Where(o => o > row))
            {
                double pair = WeightWith(none, fault) + Math.Log(rate / (rows.Length * Math.Max(1, rows.Length - 1))) - (2 * spread);
                for (int point = none.First; point < none.First + none.Count; point += Stride)
                {
                    double log = pair + Math.Log(Stride) + WithoutTwo(point, row, other);
                    if (log >= atoms.Least)
                    {
                        atoms.Add(new Atom(point, none.Set, new Disturbance.Unreadable(fault, row, other)), log);
                    }
                }
            }
        }
    }

    private double WithoutTwo(int point, int i, int j)
    {
        fit.Fit(point, problem.Grams);
        double a = fit.Precision(i, i);
        double b = fit.Precision(j, j);
        double c = fit.Precision(i, j);
        double determinant = (a * b) - (c * c);
        double u = fit.Pulls[i];
        double v = fit.Pulls[j];
        double quadratic = ((b * u * u) - (2 * c * u * v) + (a * v * v)) / determinant;
        return fit.LogEvidence + (0.5 * quadratic) + Math.Log(2 * Math.PI) - (0.5 * Math.Log(determinant));
    }

    /// <summary>The part's mass is one more normal unknown, on the rows that lack it: a change of rank one.</summary>
    private void PartsOff(int fault)
    {
        var modes = new PartOffModes(problem, hidden.Circumstances.Practical, fault);
        foreach ((int[] rows, double share) in modes.Modes)
        {
            double best = double.NegativeInfinity;
            foreach (ThinBlock block in few)
            {
                for (int point = block.First; point < block.First + block.Count; point += Stride)
                {
                    (double log, _) = WithoutPart(point, rows, modes);
                    best = Math.Max(best, WeightWith(block, fault) + Math.Log(share) + log);
                }
            }

            atoms.Note(best);
            if (best < atoms.Least - Margin)
            {
                continue;
            }

            foreach (ThinBlock block in few)
            {
                double weight = WeightWith(block, fault) + Math.Log(share);
                for (int point = block.First; point < block.First + block.Count; point++)
                {
                    (double log, double mass) = WithoutPart(point, rows, modes);
                    if (weight + log >= atoms.Least)
                    {
                        atoms.Add(new Atom(point, block.Set, new Disturbance.PartOff(fault, rows, mass)), weight + log);
                    }
                }
            }
        }
    }

    private (double LogEvidence, double MassInGrams) WithoutPart(int point, int[] rows, PartOffModes modes)
    {
        fit.Fit(point, problem.Grams);
        double pull = 0;
        double precision = 0;
        foreach (int i in rows)
        {
            pull -= fit.Pulls[i];
            foreach (int j in rows)
            {
                precision += fit.Precision(i, j);
            }
        }

        double mean = modes.Mean;
        double spread = 1 + (modes.Variance * precision);
        double away = pull - (mean * precision);
        double log = fit.LogEvidence + (mean * pull) - (0.5 * mean * mean * precision)
            + (0.5 * modes.Variance * away * away / spread) - (0.5 * Math.Log(spread));
        double mass = mean + (modes.Variance * away / spread);
        return (log + modes.LogCorrection(mass), mass);
    }

    /// <summary>Prior weight of a point of a block with one fault more.</summary>
    private double WeightWith(ThinBlock block, int fault)
    {
        FaultSet set = new(block.Set.Bits | 1u << fault);
        double probability = hidden.Prior.Sets.FirstOrDefault(s => s.Set == set).Probability;
        return Math.Log(probability / block.Count);
    }

    /// <summary>The first points of a block, which are as even as all of them.</summary>
    private sealed record ThinBlock(FaultSet Set, int First, int Count);
}
