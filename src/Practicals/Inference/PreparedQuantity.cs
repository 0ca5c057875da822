using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>A quantity with its formula prepared and its molar masses looked up.</summary>
internal sealed class PreparedQuantity
{
    private const double Coverage = 0.95;
    private static readonly double Factor = StandardNormal.Quantile((1 + Coverage) / 2);

    private readonly QuantityProgram program;
    private readonly UncertainValue[] molarMasses;
    private readonly QuantityTexts texts;

    public PreparedQuantity(QuantityDefinition quantity, AtomicWeights weights, EngineLanguage language)
    {
        texts = new QuantityTexts(language);
        Quantity = quantity;
        program = new QuantityProgram(quantity.Formula);
        molarMasses = [.. program.MolarMasses.Select(text => Formula.Parse(text).Value.MolarMass(weights))];
    }

    public QuantityDefinition Quantity { get; }

    /// <summary>Value, uncertainty, interval and budget from readings that determine the quantity.</summary>
    public QuantityResult Estimate(ReadingPattern pattern, double[] values, double[] uncertainties, int readingDecimals)
    {
        int width = program.Width;
        double[][] weights = [.. program.Names.Select(pattern.WeightsOfReading)];
        Span<double> point = stackalloc double[width];
        Span<double> covariance = stackalloc double[width * width];
        Arrange(weights, values, uncertainties, point, covariance);
        Span<double> gradient = stackalloc double[width];
        double value = program.Evaluate(point, gradient);
        double variance = QuadraticForm.Of(covariance, gradient);
        if (!double.IsFinite(value) || !double.IsFinite(variance))
        {
            return new QuantityNotFound(Quantity, texts.DividesByZero(Quantity.Label, Quantity.Formula.ToString()));
        }

        double standard = Math.Sqrt(variance);
        double? low = ProfileInterval.End(program, point, covariance, -Factor);
        double? high = ProfileInterval.End(program, point, covariance, Factor);
        CoverageInterval? interval = low is double l && high is double h ? new CoverageInterval(l, h, Coverage) : null;
        int decimals = Quantity.Unit == "g" ? readingDecimals : Figures.DecimalsFor(standard);
        return new QuantityEstimate(
            Quantity, value, standard, interval, Budget(pattern, weights, gradient, uncertainties, covariance), decimals);
    }

    private void Arrange(
        double[][] weights, double[] values, double[] uncertainties, Span<double> point, Span<double> covariance)
    {
        int width = program.Width;
        for (int s = 0; s < weights.Length; s++)
        {
            for (int reading = 0; reading < values.Length; reading++)
            {
                double share = weights[s][reading];
                point[s] += share * values[reading];
                for (int t = 0; share != 0 && t < weights.Length; t++)
                {
                    covariance[s * width + t] += share * weights[t][reading] * uncertainties[reading] * uncertainties[reading];
                }
            }
        }

        for (int m = 0; m < molarMasses.Length; m++)
        {
            point[weights.Length + m] = molarMasses[m].Value;
            for (int o = 0; o < molarMasses.Length; o++)
            {
                covariance[(weights.Length + m) * width + weights.Length + o] =
                    UncertainValue.Covariance(molarMasses[m], molarMasses[o]);
            }
        }
    }

    private List<ReadingContribution> Budget(
        ReadingPattern pattern, double[][] weights, ReadOnlySpan<double> gradient, double[] uncertainties, ReadOnlySpan<double> covariance)
    {
        double variance = QuadraticForm.Of(covariance, gradient);
        var lines = new List<ReadingContribution>();
        double explained = 0;
        for (int reading = 0; reading < uncertainties.Length; reading++)
        {
            double sensitivity = 0;
            for (int s = 0; s < weights.Length; s++)
            {
                sensitivity += gradient[s] * weights[s][reading];
            }

            double contribution = Math.Abs(sensitivity) * uncertainties[reading];
            explained += contribution * contribution;
            if (contribution > 0)
            {
                lines.Add(new ReadingContribution(
                    pattern.Used[reading], sensitivity, contribution, contribution * contribution / variance));
            }
        }

        double rest = Math.Max(0, variance - explained);
        if (molarMasses.Length > 0 && variance > 0)
        {
            lines.Add(new ReadingContribution(ReadingContribution.MolarMasses, 0, Math.Sqrt(rest), rest / variance));
        }

        return lines;
    }
}
