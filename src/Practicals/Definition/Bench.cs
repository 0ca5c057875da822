namespace Calx.Practicals.Definition;

/// <summary>What stands on the bench.</summary>
internal sealed record Bench(
    IReadOnlyList<Material> Materials,
    IReadOnlyList<Reaction> Reactions,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<Place> Places,
    IReadOnlyList<Gauge> Gauges);
