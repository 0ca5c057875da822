using Calx.Measurement.Statistics.Nonlinear;

namespace Calx.Measurement.Statistics.Series;

/// <summary>A curve of one order as a model of least squares: start, loss, half-life, and a delay where one is asked for.</summary>
internal sealed class CurveModel(double[] times, KineticOrder order, bool delayed) : INonlinearModel
{
    private static readonly string[] Names = ["start", "loss", "half-life", "delay"];

    public IReadOnlyList<string> Parameters { get; } = Names[..(delayed ? 4 : 3)];

    public int Points => times.Length;

    public bool TryEvaluate(ReadOnlySpan<double> parameters, Span<double> values, Span<double> derivatives)
    {
        (double start, double loss, double halfLife) = (parameters[0], parameters[1], parameters[2]);
        if (!(halfLife > 0))
        {
            return false;
        }

        for (int i = 0; i < times.Length; i++)
        {
            double elapsed = times[i] - (delayed ? parameters[3] : 0);
            double gone = CurveShape.Gone(order, elapsed, halfLife);
            values[i] = start - (loss * gone);
            if (derivatives.Length == 0)
            {
                continue;
            }

            derivatives[i] = 1;
            derivatives[times.Length + i] = -gone;
            derivatives[(2 * times.Length) + i] = -loss * CurveShape.ByLogHalfLife(order, elapsed, halfLife) / halfLife;
            if (delayed)
            {
                derivatives[(3 * times.Length) + i] = elapsed > 0 ? loss * CurveShape.Speed(order, elapsed, halfLife) : 0;
            }
        }

        return true;
    }
}
