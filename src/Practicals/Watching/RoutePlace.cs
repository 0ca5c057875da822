using Calx.Practicals.Clock;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>One place of a trial's route.</summary>
/// <param name="Part">Which part of the route.</param>
/// <param name="At">Which step of that part, from 0.</param>
/// <param name="Round">The heating, from 0.</param>
/// <param name="Step">What is done there.</param>
internal sealed record RoutePlace(RoutePart Part, int At, int Round, RouteStep Step)
{
    /// <summary>Id of the weighing that is taken there, or null.</summary>
    public string? WeighingId => Step.Step.Reading is string reading ? TakenReading.IdOf(reading, Occurrence) : null;

    /// <summary>The how-manieth time its reading is taken, from 1.</summary>
    public int Occurrence => Part == RoutePart.Heating ? Round + 1 : 1;

    /// <summary>Whether a step is done there, by itself or meanwhile.</summary>
    public bool Does(string stepId) => Step.Step.Id == stepId
        || Step.Meanwhile.Concat(Step.MeanwhileOnce).Any(s => s.Step.Id == stepId);
}
