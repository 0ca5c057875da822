using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>A step of the lesson made ready to be done over and over.</summary>
/// <param name="Step">The practical's step.</param>
/// <param name="Index">Its place in the practical's list.</param>
/// <param name="Minutes">How long it takes with the usual sample.</param>
/// <param name="Factor">How much longer with the plan's sample.</param>
/// <param name="Need">Which of the lesson's needs, or -1.</param>
/// <param name="Flame">Whether a flame burns.</param>
/// <param name="Cools">Whether a heated vessel is left to cool: nobody makes that faster or slower.</param>
/// <param name="Meanwhile">What is done while it goes on, each time.</param>
/// <param name="MeanwhileOnce">What is done while it goes on for the last time.</param>
internal sealed record RouteStep(
    LessonStep Step,
    int Index,
    Pert Minutes,
    double Factor,
    int Need,
    bool Flame,
    bool Cools,
    RouteStep[] Meanwhile,
    RouteStep[] MeanwhileOnce)
{
    /// <summary>Whether all do it together.</summary>
    public bool Together => Step.Place.Per == StepPer.Class;
}
