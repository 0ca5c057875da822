using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

/// <summary>The models of JCGM 101:2008, clause 9; inputs as in reference/jcgm101_inputs.csv.</summary>
internal static class MonteCarloModels
{
    private static readonly double RootThree = Math.Sqrt(3);

    public static MeasurementModel Of(string formula, params (string Name, InputDistribution Law)[] inputs) =>
        Of(formula, [], inputs);

    public static MeasurementModel Of(
        string formula, InputCorrelation[] correlations, params (string Name, InputDistribution Law)[] inputs) => new(
        "y",
        Expression.Parse(formula).Value,
        [.. inputs.Select(input => new ModelInput(input.Name, input.Law))],
        correlations);

    public static MeasurementModel FourNormals() => Four(new NormalInput(0, 1), new NormalInput(0, 1));

    public static MeasurementModel FourRectangulars(double lastScale) => Four(
        new RectangularInput(-RootThree, RootThree), new RectangularInput(-lastScale * RootThree, lastScale * RootThree));

    public static MeasurementModel MassCalibration() => Of(
        "(m + d) * (1 + (a - 1.2) * (1 / w - 1 / r)) - 100000",
        ("m", new NormalInput(100_000, 0.050)),
        ("d", new NormalInput(1.234, 0.020)),
        ("a", new RectangularInput(1.1, 1.3)),
        ("w", new RectangularInput(7000, 9000)),
        ("r", new RectangularInput(7950, 8050)));

    public static MeasurementModel MicrowavePower(double x1, double r) => Of(
        "x1^2 + x2^2",
        r == 0 ? [] : [new InputCorrelation("x1", "x2", r)],
        ("x1", new NormalInput(x1, 0.005)),
        ("x2", new NormalInput(0, 0.005)));

    public static MeasurementModel GaugeBlock() => Of(
        "l + d + d1 + d2 - l * (da * (t0 + delta) + alpha * dt) - 50000000",
        ("l", new StudentTInput(50_000_623, 25, 18)),
        ("d", new StudentTInput(215, 6, 24)),
        ("d1", new StudentTInput(0, 4, 5)),
        ("d2", new StudentTInput(0, 7, 8)),
        ("alpha", new RectangularInput(9.5e-6, 13.5e-6)),
        ("t0", new NormalInput(-0.1, 0.2)),
        ("delta", new ArcsineInput(-0.5, 0.5)),
        ("da", new CurvilinearTrapezoidInput(-1e-6, 1e-6, 0.1e-6)),
        ("dt", new CurvilinearTrapezoidInput(-0.050, 0.050, 0.025)));

    private static MeasurementModel Four(InputDistribution law, InputDistribution last) => Of(
        "x1 + x2 + x3 + x4", ("x1", law), ("x2", law), ("x3", law), ("x4", last));
}
