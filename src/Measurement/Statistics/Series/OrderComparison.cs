using System.Globalization;

namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Which order describes a series: the probability of each by Bayes' rule, with every parameter averaged over its prior.
/// </summary>
/// <remarks>
/// Priors, the same for all three: each order 1/3; the start anything; the logarithm of the loss's size anything;
/// the logarithm of the half-life anything from half of the shortest gap to twenty times the span; a lag anything up
/// to a quarter of the span; the noise as <see cref="SeriesNoise"/> says, its scale by its logarithm. All three have the same
/// number of parameters, so nothing turns on how wide these are.
/// </remarks>
public static class OrderComparison
{
    /// <summary>An order is preferred from this probability on (common practice: 'strong evidence', Kass and Raftery 1995).</summary>
    public const double Preferred = 0.95;

    // Neighbouring residuals that agree by this many standard deviations are no chance.
    private const double Wanders = 5;

    /// <summary>Compares the three orders.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static OrderVerdict Of(TimeSeries series, CurveSettings settings)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(settings);
        var rows = new SeriesRows(series, settings.Disturbances);
        int needed = SeriesCurve.Needed(rows, settings);
        if (rows.Count < needed)
        {
            return new OrderVerdict.NotCompared(new CurveResult.TooFewReadings(rows.Count, needed).Reason);
        }

        KineticOrder[] orders = Enum.GetValues<KineticOrder>();
        FittedCurve[] curves = [.. orders.Select(order =>
            new FittedCurve(series, order, settings, rows, CurveNodes.Of(rows, order, settings)))];
        double[] evidence = [.. curves.Select(curve => curve.Nodes.LogEvidence)];
        double total = LogSum.Of(evidence);
        double[] probabilities = [.. evidence.Select(log => Math.Exp(log - total))];
        int best = Array.IndexOf(probabilities, probabilities.Max());
        return Judge(curves[best], rows, orders[best], probabilities);
    }

    private static OrderVerdict Judge(FittedCurve curve, SeriesRows rows, KineticOrder order, double[] probabilities)
    {
        CoursePart part = curve.Best.Part;
        if (rows.Values.Max() == rows.Values.Min() || part.Loss * part.Loss < 16 * part.LossVariance)
        {
            return new OrderVerdict.NotCompared("the readings change by no more than their scatter explains");
        }

        if (curve.Wandering > Wanders)
        {
            return new OrderVerdict.CannotTell(
                "none of the three curves follows the readings: what is left wanders by more than chance explains", probabilities);
        }

        return probabilities[(int)order] >= Preferred
            ? new OrderVerdict.Prefers(order, probabilities)
            : new OrderVerdict.CannotTell(Rivals(probabilities), probabilities);
    }

    private static string Rivals(double[] probabilities)
    {
        KineticOrder[] ranked = [.. Enum.GetValues<KineticOrder>().OrderByDescending(order => probabilities[(int)order])];
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Name(ranked[0])} and {Name(ranked[1])} order both describe the readings, with probabilities {Of(0):0.00} and {Of(1):0.00}: readings over more half-lives tell them apart");

        double Of(int rank) => probabilities[(int)ranked[rank]];
    }

    private static string Name(KineticOrder order) => order switch
    {
        KineticOrder.Zeroth => "zeroth",
        KineticOrder.First => "first",
        _ => "second",
    };
}

/// <summary>What a series says of the order.</summary>
public abstract record OrderVerdict
{
    private OrderVerdict()
    {
    }

    /// <summary>The verdict where there is no series to compare curves on.</summary>
    /// <param name="reason">Why not, for a teacher.</param>
    public static OrderVerdict Without(string reason) => new NotCompared(reason);

    /// <summary>One order is far more probable than the others together; of these three, not of all that might be.</summary>
    public sealed record Prefers : OrderVerdict
    {
        internal Prefers(KineticOrder order, IReadOnlyList<double> probabilities) => (Order, Probabilities) = (order, probabilities);

        /// <summary>The order.</summary>
        public KineticOrder Order { get; }

        /// <summary>Its probability.</summary>
        public double Probability => Probabilities[(int)Order];

        /// <summary>The probability of each order, zeroth first; they sum to 1.</summary>
        public IReadOnlyList<double> Probabilities { get; }
    }

    /// <summary>The readings do not decide.</summary>
    public sealed record CannotTell : OrderVerdict
    {
        internal CannotTell(string reason, IReadOnlyList<double> probabilities) => (Reason, Probabilities) = (reason, probabilities);

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }

        /// <summary>The probability of each order, zeroth first; they sum to 1.</summary>
        public IReadOnlyList<double> Probabilities { get; }
    }

    /// <summary>There is nothing to compare.</summary>
    public sealed record NotCompared : OrderVerdict
    {
        internal NotCompared(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
