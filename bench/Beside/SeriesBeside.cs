using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;
using Calx.Measurement.Statistics.Nonlinear;
using Calx.Measurement.Statistics.Series;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Calx.Bench.Beside;

/// <summary>
/// First-order curves through 300 readings of 18 groups beside two general libraries, all from the same rough start and with
/// exact derivatives: Levenberg and Marquardt of MathNet.Numerics in this process, and scipy's curve_fit (MINPACK).
/// </summary>
internal static class SeriesBeside
{
    private const int Rounds = 20;
    private static readonly double[] Start = [182.0, 1.0, 150];
    private static readonly double[] Times = [.. Enumerable.Range(0, SeriesData.Readings).Select(i => 2.0 * i)];
    private static readonly double[][] Values = [.. SeriesData.All.Select(series => series.Values.ToArray())];

    public static bool Run(SideBySide side)
    {
        bool ok = BesideMathNet(side.Passes);
        ok &= side.Compare(
            "first-order curve through 300 readings, least squares", "fits", new Peer("series.py", "400"), Rounds * SeriesData.Groups, Ours);
        return ok & Bounds();
    }

    private static bool Ours() => Enumerable.Range(0, Rounds).All(_ => Values.All(values => IsNear(OurHalfLife(values))));

    private static bool Theirs() => Enumerable.Range(0, Rounds).All(_ => Values.All(values => IsNear(MathNetHalfLife(values))));

    private static double OurHalfLife(double[] values) =>
        NonlinearLeastSquares.Fit(new NonlinearProblem(new CurveModel(Times, KineticOrder.First, false), values, Start))
            is NonlinearFitResult.Converged { Fit: var fit } ? fit.Parameters[2] : 0;

    private static double MathNetHalfLife(double[] values)
    {
        IObjectiveModel model = ObjectiveFunction.NonlinearModel(
            Curve, Derivatives, Vector<double>.Build.Dense(Times), Vector<double>.Build.Dense(values));
        return new LevenbergMarquardtMinimizer().FindMinimum(model, Vector<double>.Build.Dense(Start)).MinimizingPoint[2];
    }

    private static Vector<double> Curve(Vector<double> p, Vector<double> t) =>
        t.Map(time => p[0] - (p[1] * (1 - Math.Exp(-Math.Log(2) * time / p[2]))));

    private static Matrix<double> Derivatives(Vector<double> p, Vector<double> t)
    {
        Matrix<double> all = Matrix<double>.Build.Dense(t.Count, 3);
        for (int i = 0; i < t.Count; i++)
        {
            double x = Math.Log(2) * t[i] / p[2];
            double left = Math.Exp(-x);
            (all[i, 0], all[i, 1], all[i, 2]) = (1, left - 1, p[1] * x * left / p[2]);
        }

        return all;
    }

    // Eighteen groups, each known to about 0.5: none is ten uncertainties off.
    private static bool IsNear(double halfLife) => Math.Abs(halfLife - SeriesData.HalfLife) < 5;

    private static bool BesideMathNet(int passes)
    {
        bool ok = Ours() & Theirs();
        // The same least: what the two found differs by less than a thousandth of an uncertainty.
        ok &= Values.All(values => Math.Abs(OurHalfLife(values) - MathNetHalfLife(values)) < 5e-4);
        List<double> ours = [];
        List<double> theirs = [];
        for (int pass = 0; pass < passes; pass++)
        {
            ours.Add(Rate(Ours));
            theirs.Add(Rate(Theirs));
        }

        Console.WriteLine($"first-order curve through 300 readings, least squares: medians of {passes} passes in turn");
        Print("this program", ours);
        Print("MathNet.Numerics", theirs);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  ratio {Middle(ours) / Middle(theirs):f2}, checks {(ok ? "ok" : "FAILED")}"));
        return ok;
    }

    private static double Rate(Func<bool> run)
    {
        var clock = Stopwatch.StartNew();
        run();
        return Rounds * SeriesData.Groups / clock.Elapsed.TotalSeconds;
    }

    // No peer averages over parameters and noise, so these are held to bounds: a page must not wait for them.
    private static bool Bounds()
    {
        var benchmark = new SeriesBenchmark();
        var ofClass = new SeriesClassBenchmark();
        return Bound("class of 12 x 21 points, gas held back", 1200, () => ofClass.CurvesOfTwelveGasHeldBack())
            & Bound("class of 12 x 21 points, noise found", 1200, () => ofClass.CurvesOfTwelve())
            & Bound("the same with causes and next steps", 2000, () => ofClass.CurvesAndCausesOfTwelve())
            & Bound("curve, one group", 20, () => benchmark.CurveOneGroup())
            & Bound("curve, noise found, one group", 150, () => benchmark.CurveWithNoiseFoundOneGroup())
            & Bound("curve, delay found, one group", 500, () => benchmark.CurveWithDelayOneGroup())
            & Bound("curve, 18 groups", 360, () => benchmark.CurveEighteenGroups())
            & Bound("orders compared, 18 groups", 1000, () => benchmark.OrdersEighteenGroups())
            & Bound("disturbances, 18 groups", 1000, () => benchmark.DisturbancesEighteenGroups());
    }

    private static bool Bound(string what, double mostMilliseconds, Action run)
    {
        run();
        double[] all = [.. Enumerable.Range(0, 9).Select(_ =>
        {
            var clock = Stopwatch.StartNew();
            run();
            return clock.Elapsed.TotalMilliseconds;
        }).Order()];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {what,-40} {all[4],10:n2} ms (at most {mostMilliseconds})"));
        return all[4] <= mostMilliseconds;
    }

    private static double Middle(List<double> rates) => rates.Order().ElementAt(rates.Count / 2);

    private static void Print(string name, List<double> rates) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture, $"  {name,-40} {Middle(rates),15:n0} fits/s   ({rates.Min():n0} to {rates.Max():n0})"));
}
