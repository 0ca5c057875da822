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
    public QuantityResult Estimate(ReadingPattern pattern, double[] values, double[] uncertainties, SharedError[] shared, int? readingDecimals)
    {
        int width = program.Width;
        double[][] weights = [.. program.Names.Select(pattern.WeightsOfReading)];
        Span<double> point = stackalloc double[width];
        Span<double> covariance = stackalloc double[width * width];
        Arrange(weights, values, uncertainties, point, covariance);
        AddShared(weights, shared, covariance);
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
        int decimals = readingDecimals ?? Figures.DecimalsFor(standard);
        return new QuantityEstimate(
            Quantity, value, standard, interval, Budget(pattern, weights, gradient, uncertainties, shared, covariance), decimals);
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

    private void AddShared(double[][] weights, SharedError[] shared, Span<double> covariance)
    {
        foreach (SharedError error in shared)
        {
            double[] moved = [.. weights.Select(w => error.StandardUncertainty * w.Zip(error.Factors, (share, factor) => share * factor).Sum())];
            for (int s = 0; s < moved.Length; s++)
            {
                for (int t = 0; t < moved.Length; t++)
                {
                    covariance[(s * program.Width) + t] += moved[s] * moved[t];
                }
            }
        }
    }

    private List<ReadingContribution> Budget(
        ReadingPattern pattern, double[][] weights, ReadOnlySpan<double> gradient, double[] uncertainties, SharedError[] shared, ReadOnlySpan<double> covariance)
    {
        double variance = QuadraticForm.Of(covariance, gradient);
        var lines = new List<ReadingContribution>();
        double explained = 0;
        double[] sensitivities = new double[uncertainties.Length];
        for (int reading = 0; reading < uncertainties.Length; reading++)
        {
            double sensitivity = 0;
            for (int s = 0; s < weights.Length; s++)
            {
                sensitivity += gradient[s] * weights[s][reading];
            }

            sensitivities[reading] = sensitivity;
            Add(pattern.Used[reading], sensitivity, uncertainties[reading]);
        }

        foreach (SharedError error in shared)
        {
            Add(error.Source, sensitivities.Zip(error.Factors, (s, f) => s * f).Sum(), error.StandardUncertainty);
        }

        double rest = Math.Max(0, variance - explained);
        if (molarMasses.Length > 0 && variance > 0)
        {
            lines.Add(new ReadingContribution(ReadingContribution.MolarMasses, 0, Math.Sqrt(rest), rest / variance));
        }

        return lines;

        void Add(string source, double sensitivity, double uncertainty)
        {
            double contribution = Math.Abs(sensitivity) * uncertainty;
            explained += contribution * contribution;
            if (contribution > 0)
            {
                lines.Add(new ReadingContribution(source, sensitivity, contribution, contribution * contribution / variance));
            }
        }
    }
}
