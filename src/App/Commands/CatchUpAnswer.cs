using Calx.Papers.Handouts;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;

namespace Calx.App.Commands;

/// <summary>A class's packs, and how they were asked for.</summary>
/// <param name="Plan">The lesson.</param>
/// <param name="Seed">Which of the possible classes; null where a lesson keeps the packs.</param>
/// <param name="OddShare">Share of odd cases that was asked for; null where a lesson keeps the packs.</param>
/// <param name="Level">How much the sheets help.</param>
/// <param name="Occasion">Class and date.</param>
/// <param name="Packs">The packs.</param>
internal sealed record CatchUpAnswer(
    PlanSettings Plan, ulong? Seed, double? OddShare, SupportLevel Level, PaperOccasion Occasion, IReadOnlyList<CatchUpPack> Packs);
