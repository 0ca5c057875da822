using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Watching;

/// <summary>
/// When what was heated is cool enough to weigh: once its warmth moves the reading by less than half a division of the balance.
/// The warmth is that of the practical's cooling curve; its effect is taken at the upper end of what the practical says of one
/// kelvin. It is never said earlier than the least time of the step at which it cools (docs/methods/watching.md).
/// </summary>
internal sealed class CoolingRule
{
    /// <summary>Where a practical says nothing of it: the upper end for warm porcelain in the built-in practicals (judgement).</summary>
    private const double UsualMilligramsPerKelvin = 0.30;

    /// <summary>Where the law has no upper end, the value that all but so many groups lie below.</summary>
    private const double Above = 0.025;

    /// <summary>Nothing on a bench is still warm so many minutes later.</summary>
    private const double Longest = 600;

    private readonly CoolingDefinition? cooling;
    private readonly double milligramsPerKelvin;

    /// <summary>Takes what a practical says of warmth.</summary>
    public CoolingRule(Practical practical)
    {
        cooling = practical.Cooling;
        milligramsPerKelvin = practical.Faults.Select(f => f.Effect).OfType<FaultEffect.Warm>()
            .Where(w => w.Reading == cooling?.Reading).Select(w => UpperEnd(w.MilligramsPerKelvin))
            .DefaultIfEmpty(UsualMilligramsPerKelvin).Max();
    }

    /// <summary>Minutes of cooling before a weighing.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="least">The least minutes of the step at which it cools.</param>
    /// <param name="most">The most.</param>
    public double MinutesFor(Balance balance, double least, double most)
    {
        if (cooling is null)
        {
            // Without a curve the step's own time is all that is known; its longest is on the safe side.
            return most;
        }

        double warmest = 0.5 * balance.ResolutionInGrams * 1000 / milligramsPerKelvin;
        double warm = least;
        double cool = Longest;
        if (cooling.ExcessInKelvinAfter(least) < warmest)
        {
            return least;
        }

        while (cool - warm > 1e-6)
        {
            double middle = (warm + cool) / 2;
            (warm, cool) = cooling.ExcessInKelvinAfter(middle) < warmest ? (warm, middle) : (middle, cool);
        }

        return cool;
    }

    private static double UpperEnd(ParameterLaw law) => law switch
    {
        ParameterLaw.Fixed f => f.Value,
        ParameterLaw.Rectangular r => r.High,
        ParameterLaw.Triangular t => t.High,
        ParameterLaw.Beta b => b.High,
        ParameterLaw.Mixture m => m.Components.Max(c => UpperEnd(c.Law)),
        _ => LawQuantile.Of(law, 1 - Above),
    };
}
