using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>How large a cause was, given that it counts: for the teacher, in words.</summary>
internal sealed class CauseSizes(CausePosterior posterior)
{
    /// <summary>Below this nobody asks for a size.</summary>
    private const double LeastSized = 0.01;

    private readonly Practical practical = posterior.Hidden.Circumstances.Practical;
    private readonly CauseTexts texts = new(posterior.Language);

    /// <summary>A cause with its probabilities, the weighing it befell and its size.</summary>
    public CauseProbability Describe(int fault, double probability)
    {
        FaultDefinition definition = practical.Faults[fault];
        Atom[] with = [.. posterior.Atoms.Where(a => a.Counting.Has(fault))];
        double present = Math.Min(1, with.Sum(a => a.Weight));
        if (present < LeastSized)
        {
            return new CauseProbability(definition.Cause, definition.Label, probability, present);
        }

        (string? reading, string? digits) = definition.Effect switch
        {
            FaultEffect.Pen => Slip(with),
            FaultEffect.Off => (Row(with), null),
            _ => (Weighing(fault, with), (string?)null),
        };
        string? detail = definition.Effect switch
        {
            FaultEffect.Pen when digits is not null => texts.MoreProbably(NameOf(reading) ?? string.Empty, digits),
            FaultEffect.Pen => texts.CannotBeTold(NameOf(reading) ?? string.Empty),
            FaultEffect.Off => NameOf(reading),
            _ => Size(fault, definition, with, present),
        };
        return new CauseProbability(definition.Cause, definition.Label, probability, present, reading, detail, digits);
    }

    private string? NameOf(string? reading) => reading is null ? null : new Wording(posterior.Language).Quoted(ReadingNames.OfId(practical, reading));

    private (string? Reading, string? Digits) Slip(Atom[] with)
    {
        var likeliest = with.Where(a => a.Disturbance is Disturbance.Slip or Disturbance.Unreadable)
            .GroupBy(a => a.Disturbance is Disturbance.Slip slip ? (slip.Row, slip.Digits) : (((Disturbance.Unreadable)a.Disturbance!).Row, null))
            .OrderByDescending(g => g.Sum(a => a.Weight)).FirstOrDefault();
        return likeliest is null ? (null, null) : (posterior.Problem.Rows[likeliest.Key.Row].Id, likeliest.Key.Digits);
    }

    private string? Row(Atom[] with)
    {
        IReadOnlyList<int>? rows = with.Where(a => a.Disturbance is Disturbance.PartOff)
            .GroupBy(a => ((Disturbance.PartOff)a.Disturbance!).Rows).OrderByDescending(g => g.Sum(a => a.Weight)).FirstOrDefault()?.Key;
        return rows is null ? null : posterior.Problem.Rows[rows[0]].Id;
    }

    /// <summary>The weighing at which warmth, another zero or soot most probably first showed.</summary>
    private string? Weighing(int fault, Atom[] with)
    {
        if (practical.Faults[fault].Effect is FaultEffect.Set)
        {
            return null;
        }

        var weights = new double[posterior.Problem.View.Weighings.Count];
        double[] shift = new double[weights.Length];
        foreach (Atom atom in with.Where(a => a.Set.Has(fault)))
        {
            HiddenGroups hidden = posterior.Hidden;
            hidden.Space.Shift(atom.Set, fault, hidden.EvenOf(atom.Point, atom.Set), hidden.Tables.Of, posterior.Problem.View.Weighings, shift);
            int first = Array.FindIndex(shift, s => s != 0);
            if (first >= 0)
            {
                weights[first] += atom.Weight;
            }
        }

        int likeliest = Array.IndexOf(weights, weights.Max());
        return weights.Max() > 0 ? posterior.Problem.View.Weighings[likeliest].Id : null;
    }

    private string Size(int fault, FaultDefinition definition, Atom[] with, double present)
    {
        double[] moved = Quantiles(with, a => a.Moved[fault], present);
        double whole = Math.Abs(posterior.Hidden.Rule.WholeChangeOfOneGram);
        if (definition.Cause != "not-all-reacted" || whole == 0)
        {
            string milligrams = Range(1000 * Math.Abs(moved[1]), 1000 * Math.Abs(moved[0]), 1000 * Math.Abs(moved[2]), texts.Milligrams);
            if (!posterior.Hidden.Rule.ReachesChange(fault))
            {
                return texts.AsMuchAs(milligrams, practical.Quantities.First(q => q.Id == practical.Findings.Sample).Label);
            }

            return moved[1] < 0 ? texts.TooLow(milligrams) : texts.TooHigh(milligrams);
        }

        double[] left = Quantiles(with, a => 100 * Math.Abs(a.Moved[fault]) / (whole * posterior.Problem.View.SampleOf(a.Point, Amounts(a))), present);
        string percents = Range(left[1], left[0], left[2], texts.Percents);
        return posterior.Hidden.Rule.IsUsuallyShort(posterior.Problem.View.Rounds) ? texts.LeftBeyondUsual(percents) : texts.Left(percents);
    }

    private ReadOnlySpan<double> Amounts(Atom atom) => atom.Estimates.AsSpan(posterior.Problem.Unknowns.Parts);

    /// <summary>2.5 %, 50 % and 97.5 % of a number over weighted atoms.</summary>
    private static double[] Quantiles(Atom[] atoms, Func<Atom, double> number, double total)
    {
        var sorted = atoms.Select(a => (Value: number(a), a.Weight)).OrderBy(x => x.Value).ToArray();
        double[] result = new double[3];
        double below = 0;
        int next = 0;
        foreach ((double value, double weight) in sorted)
        {
            below += weight;
            while (next < 3 && below >= total * (next == 0 ? 0.025 : next == 1 ? 0.5 : 0.975))
            {
                result[next++] = value;
            }
        }

        for (; next < 3; next++)
        {
            result[next] = sorted[^1].Value;
        }

        return result;
    }

    private static string Range(double middle, double low, double high, Func<string, string, string, string> said)
    {
        (low, high) = (Math.Min(low, high), Math.Max(low, high));
        return said(Round(middle), Round(low), Round(high));

        static string Round(double value) => Figures.Text(value, value < 10 ? 1 : 0);
    }
}
