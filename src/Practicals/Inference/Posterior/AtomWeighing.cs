using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>Finishes the atoms: the exact rounding, what each fault moved, which causes count, what was seen, and weights
/// that add up to 1.</summary>
internal sealed class AtomWeighing
{
    /// <summary>Below this share of the greatest weight the normal law stands for the exact rounding.</summary>
    private const double ExactDepth = 4;

    private readonly HiddenGroups hidden;
    private readonly GroupProblem problem;
    private readonly PointFit fit;
    private readonly ExactRounding exact;
    private readonly SeenEvidence seen;
    private readonly CoolingEvidence? cooling;
    private readonly double[] grams;

    private AtomWeighing(HiddenGroups hidden, GroupProblem problem, RoundingRatios ratios)
    {
        this.hidden = hidden;
        this.problem = problem;
        fit = new PointFit(problem.View.Table, problem.Unknowns, problem.Rows);
        exact = new ExactRounding(problem.Rows, problem.Unknowns, fit, ratios);
        seen = new SeenEvidence(hidden.Circumstances.Practical, problem.Seen, problem.SilenceCounts);
        cooling = CoolingEvidence.Of(hidden, problem);
        grams = new double[problem.Grams.Length];
    }

    /// <summary>Finishes the atoms of a group; their weights then add up to 1.</summary>
    /// <returns>Natural logarithm of the density of the readings over all of them, and of the observations.</returns>
    public static double Finish(HiddenGroups hidden, GroupProblem problem, IReadOnlyList<Atom> atoms, RoundingRatios ratios)
    {
        var weighing = new AtomWeighing(hidden, problem, ratios);
        double greatest = atoms.Max(a => a.LogWeight);
        foreach (Atom atom in atoms)
        {
            weighing.Finish(atom, greatest);
        }

        double top = atoms.Max(a => a.LogWeight);
        double sum = 0;
        foreach (Atom atom in atoms)
        {
            atom.Weight = Math.Exp(atom.LogWeight - top);
            sum += atom.Weight;
        }

        foreach (Atom atom in atoms)
        {
            atom.Weight /= sum;
        }

        return top + Math.Log(sum);
    }

    private void Finish(Atom atom, double greatest)
    {
        problem.Grams.CopyTo(grams, 0);
        (int Row, int Other) left = (-1, -1);
        switch (atom.Disturbance)
        {
            case Disturbance.Slip slip:
                grams[slip.Row] = slip.ShownInGrams;
                break;
            case Disturbance.PartOff off:
                foreach (int row in off.Rows)
                {
                    grams[row] += off.MassInGrams;
                }

                break;
            case Disturbance.Unreadable unreadable:
                left = (unreadable.Row, unreadable.Other);
                Impute(atom.Point, unreadable);
                break;
            default:
                break;
        }

        fit.Fit(atom.Point, grams);
        if (atom.LogWeight > greatest - ExactDepth)
        {
            atom.LogWeight += exact.LogRatio(left.Row, left.Other);
        }

        atom.Estimates = [.. fit.Estimates];
        Judge(atom);
        atom.LogWeight += seen.LogLikelihood(atom.Counting) + (cooling?.LogLikelihood(atom) ?? 0);
    }

    /// <summary>A number left aside takes what the others say of it.</summary>
    private void Impute(int point, Disturbance.Unreadable unreadable)
    {
        fit.Fit(point, grams);
        double a = fit.Precision(unreadable.Row, unreadable.Row);
        if (unreadable.Row == unreadable.Other)
        {
            grams[unreadable.Row] -= fit.Pulls[unreadable.Row] / a;
            return;
        }

        double b = fit.Precision(unreadable.Other, unreadable.Other);
        double c = fit.Precision(unreadable.Row, unreadable.Other);
        double determinant = (a * b) - (c * c);
        double u = fit.Pulls[unreadable.Row];
        double v = fit.Pulls[unreadable.Other];
        grams[unreadable.Row] -= ((b * u) - (c * v)) / determinant;
        grams[unreadable.Other] -= ((a * v) - (c * u)) / determinant;
    }

    private void Judge(Atom atom)
    {
        double[] moved = new double[hidden.Circumstances.Practical.Faults.Count];
        ReadOnlySpan<double> amounts = fit.Amounts;
        double together = problem.View.EffectsOf(atom.Point, atom.Set).At(amounts, moved);
        if (atom.Disturbance is Disturbance disturbance)
        {
            (double alone, double withOthers) = MovedBy(disturbance);
            moved[disturbance.Fault] = alone;
            together += withOthers;
        }

        atom.Moved = moved;
        atom.Counting = CauseRule.Counting(
            moved, together, hidden.Rule.Threshold(problem.View.SampleOf(atom.Point, amounts), problem.DivisionInGrams));
    }

    /// <summary>A slip or a missing part counts in whichever weighing it stands: where a later weighing took the place of
    /// its own, by its own size.</summary>
    private (double Alone, double WithOthers) MovedBy(Disturbance disturbance)
    {
        double difference = 0;
        double largest = 0;
        for (int row = 0; row < grams.Length; row++)
        {
            double shift = problem.Grams[row] - grams[row];
            if (shift != 0 && problem.Rows[row].IsReading)
            {
                difference += problem.View.Coefficients[problem.Rows[row].Weighings[0].Weighing] * shift;
                largest = Math.Abs(shift) > Math.Abs(largest) ? shift : largest;
            }
        }

        if (disturbance is Disturbance.Untold)
        {
            return (double.MaxValue, 0);
        }

        bool superseded = disturbance switch
        {
            Disturbance.Slip slip => Coefficient(slip.Row) == 0,
            Disturbance.Unreadable unreadable => Coefficient(unreadable.Row) == 0 || Coefficient(unreadable.Other) == 0,
            Disturbance.PartOff off => off.Rows.All(r => Coefficient(r) == 0),
            _ => false,
        };
        return (superseded ? largest : difference, difference);
    }

    private double Coefficient(int row) => problem.View.Coefficients[problem.Rows[row].Weighings[0].Weighing];
}
