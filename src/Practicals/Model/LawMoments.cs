using Calx.Practicals.Definition;

namespace Calx.Practicals.Model;

/// <summary>Mean and variance of a parameter's law.</summary>
internal static class LawMoments
{
    /// <summary>Both, in closed form (N. L. Johnson, S. Kotz and N. Balakrishnan, Continuous Univariate Distributions, 1994).</summary>
    public static (double Mean, double Variance) Of(ParameterLaw law) => law switch
    {
        ParameterLaw.Fixed f => (f.Value, 0),
        ParameterLaw.Normal n => (n.Mean, n.StandardDeviation * n.StandardDeviation),
        ParameterLaw.Rectangular r => ((r.Low + r.High) / 2, Math.Pow(r.High - r.Low, 2) / 12),
        ParameterLaw.Triangular t => (
            (t.Low + t.Mode + t.High) / 3,
            ((t.Low * t.Low) + (t.Mode * t.Mode) + (t.High * t.High) - (t.Low * t.Mode) - (t.Low * t.High) - (t.Mode * t.High)) / 18),
        ParameterLaw.Beta b => (LawMiddle.Of(b), Math.Pow((b.High - b.Low) / (b.A + b.B), 2) * b.A * b.B / (b.A + b.B + 1)),
        ParameterLaw.Exponential e => (e.Mean, e.Mean * e.Mean),
        ParameterLaw.Lognormal l => Lognormal(l.Median, l.SigmaLn),
        ParameterLaw.Gamma g => (g.Shape * g.Scale, g.Shape * g.Scale * g.Scale),
        ParameterLaw.Mixture m => Mixed(m),
        _ => throw new ArgumentException($"{law?.GetType().Name} is no law of a parameter.", nameof(law)),
    };

    private static (double, double) Lognormal(double median, double sigma)
    {
        double mean = median * Math.Exp(sigma * sigma / 2);
        return (mean, mean * mean * (Math.Exp(sigma * sigma) - 1));
    }

    private static (double, double) Mixed(ParameterLaw.Mixture mixture)
    {
        (double Share, double Mean, double Variance)[] parts = [.. mixture.Components.Select(c => (c.Share, Of(c.Law).Mean, Of(c.Law).Variance))];
        double mean = parts.Sum(p => p.Share * p.Mean);
        return (mean, parts.Sum(p => p.Share * (p.Variance + Math.Pow(p.Mean - mean, 2))));
    }
}
