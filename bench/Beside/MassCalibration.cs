using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;

namespace Calx.Bench.Beside;

/// <summary>The example of JCGM 101:2008, 9.3, in mg and kg/m³.</summary>
internal static class MassCalibration
{
    public static MeasurementModel Model() => new(
        "dm",
        Expression.Parse("(m + d) * (1 + (a - 1.2) * (1 / w - 1 / r)) - 100000").Value,
        [
            new ModelInput("m", new NormalInput(100_000, 0.050)),
            new ModelInput("d", new NormalInput(1.234, 0.020)),
            new ModelInput("a", new RectangularInput(1.1, 1.3)),
            new ModelInput("w", new RectangularInput(7000, 9000)),
            new ModelInput("r", new RectangularInput(7950, 8050)),
        ],
        []);
}
