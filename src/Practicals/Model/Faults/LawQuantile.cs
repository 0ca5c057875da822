using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>The quantile of a parameter's law: how a number between 0 and 1 becomes a number of the bench. Draws, stratified
/// points and medians all go through it.</summary>
internal static class LawQuantile
{
    /// <summary>The value below which the law puts a share <paramref name="p"/> of all groups.</summary>
    /// <param name="law">The law.</param>
    /// <param name="p">Above 0 and below 1. In a mixture it chooses the component first, in the order of the file, so there
    /// it is no true quantile but still draws the law.</param>
    public static double Of(ParameterLaw law, double p) => law switch
    {
        ParameterLaw.Fixed f => f.Value,
        ParameterLaw.Normal n => n.Mean + (n.StandardDeviation * StandardNormal.Quantile(p)),
        ParameterLaw.Rectangular r => r.Low + ((r.High - r.Low) * p),
        ParameterLaw.Triangular t => Triangular(t.Low, t.Mode, t.High, p),
        ParameterLaw.Beta b => b.Low + ((b.High - b.Low) * BetaFunction.Quantile(b.A, b.B, p)),
        ParameterLaw.Exponential e => -e.Mean * Math.Log(1 - p),
        ParameterLaw.Lognormal l => l.Median * Math.Exp(l.SigmaLn * StandardNormal.Quantile(p)),
        ParameterLaw.Gamma g => g.Scale * GammaFunction.Quantile(g.Shape, p),
        ParameterLaw.Mixture m => Mixture(m, p),
        _ => throw new ArgumentException($"{law?.GetType().Name} is no law of a parameter.", nameof(law)),
    };

    /// <summary>The median: for a mixture by bisection over all its components.</summary>
    public static double Median(ParameterLaw law) => law is ParameterLaw.Mixture mixture ? MedianOf(mixture) : Of(law, 0.5);

    /// <summary>The quantile of a triangular law.</summary>
    public static double Triangular(double low, double mode, double high, double p)
    {
        double rise = (mode - low) / (high - low);
        return p < rise
            ? low + Math.Sqrt(p * (high - low) * (mode - low))
            : high - Math.Sqrt((1 - p) * (high - low) * (high - mode));
    }

    /// <summary>Which component of a mixture a number between 0 and 1 falls into, and where within it.</summary>
    public static (ParameterLaw Law, double Within) Component(ParameterLaw.Mixture mixture, double p)
    {
        double below = 0;
        foreach (MixtureComponent component in mixture.Components)
        {
            if (p < below + component.Share || ReferenceEquals(component, mixture.Components[^1]))
            {
                double within = (p - below) / component.Share;
                return (component.Law, Math.Clamp(within, 1e-12, 1 - 1e-12));
            }

            below += component.Share;
        }

        throw new ArgumentException("A mixture has components.", nameof(mixture));
    }

    private static double Mixture(ParameterLaw.Mixture mixture, double p)
    {
        (ParameterLaw law, double within) = Component(mixture, p);
        return Of(law, within);
    }

    /// <summary>Sorted stratified points of all components, weighted: exact enough for what counts as ordinary.</summary>
    private static double MedianOf(ParameterLaw.Mixture mixture)
    {
        const int Points = 256;
        var weighted = mixture.Components
            .SelectMany(c => Enumerable.Range(0, Points).Select(i => (Value: Of(c.Law, (i + 0.5) / Points), Weight: c.Share / Points)))
            .OrderBy(x => x.Value);
        double below = 0;
        foreach ((double value, double weight) in weighted)
        {
            below += weight;
            if (below >= 0.5)
            {
                return value;
            }
        }

        throw new ArgumentException("The shares of a mixture add up to 1.", nameof(mixture));
    }
}
