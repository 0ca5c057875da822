using Calx.Bench.Beside;

namespace Calx.Bench;

/// <summary>Something that is timed.</summary>
/// <param name="Name">What a user types to choose it.</param>
/// <param name="Benchmark">Its BenchmarkDotNet class.</param>
/// <param name="Beside">Times it beside a peer and prints both; true where every answer agreed with its check.</param>
internal sealed record Capability(string Name, Type Benchmark, Func<SideBySide, bool> Beside);
