using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>The part of a class value's uncertainty that comes from numbers which the whole class shares (one bottle, one acid): all
/// groups are off alike, so more groups do not lessen it.</summary>
/// <param name="From">The shared numbers, each with the standard uncertainty that it brings, in the unit of the value.</param>
internal sealed record CommonPart(IReadOnlyList<(Parameter Parameter, double StandardUncertainty)> From)
{
    /// <summary>Nothing is shared.</summary>
    public static CommonPart None { get; } = new([]);

    /// <summary>All of it together, in the unit of the value; 0 where nothing is shared.</summary>
    public double StandardUncertainty { get; } = Math.Sqrt(From.Sum(f => f.StandardUncertainty * f.StandardUncertainty));

    /// <summary>What chance leaves open and what is common, together, with the degrees of freedom after Welch and Satterthwaite
    /// (JCGM 100:2008, G.4.1); the common part is taken as known.</summary>
    /// <param name="standardUncertainty">What chance leaves open.</param>
    /// <param name="degreesOfFreedom">Its degrees of freedom.</param>
    public (double StandardUncertainty, double DegreesOfFreedom) With(double standardUncertainty, double degreesOfFreedom)
    {
        double widened = Math.Sqrt((standardUncertainty * standardUncertainty) + (StandardUncertainty * StandardUncertainty));
        return StandardUncertainty == 0 ? (standardUncertainty, degreesOfFreedom)
            : (widened, degreesOfFreedom * Math.Pow(widened / standardUncertainty, 4));
    }
}
