using Calx.Practicals.Definition;

namespace Calx.Practicals.Model;

/// <summary>The middle size of a parameter: what is put in where one number has to stand for its law.</summary>
public static class LawMiddle
{
    /// <summary>The mean, but for a lognormal its median, which its long tail does not move.</summary>
    public static double Of(ParameterLaw law) => law switch
    {
        ParameterLaw.Fixed f => f.Value,
        ParameterLaw.Normal n => n.Mean,
        ParameterLaw.Rectangular r => (r.Low + r.High) / 2,
        ParameterLaw.Triangular t => (t.Low + t.Mode + t.High) / 3,
        ParameterLaw.Beta b => b.Low + (b.High - b.Low) * b.A / (b.A + b.B),
        ParameterLaw.Exponential e => e.Mean,
        ParameterLaw.Lognormal l => l.Median,
        ParameterLaw.Gamma g => g.Shape * g.Scale,
        ParameterLaw.Mixture m => m.Components.Sum(c => c.Share * Of(c.Law)),
        _ => throw new ArgumentException($"{law?.GetType().Name} is no law of a parameter.", nameof(law)),
    };
}
