namespace Calx.App.Commands;

/// <summary>How a plan is worked out and shown.</summary>
/// <param name="Seed">Which of the possible simulations.</param>
/// <param name="LooksForWays">Whether ways out are looked for.</param>
/// <param name="Html">Where the report goes, or null.</param>
/// <param name="AsJson">Whether one JSON document is printed.</param>
internal sealed record PlanHow(ulong Seed, bool LooksForWays, string? Html, bool AsJson);
