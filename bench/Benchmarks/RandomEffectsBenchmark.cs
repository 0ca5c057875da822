using BenchmarkDotNet.Attributes;
using Calx.Measurement.Statistics;

namespace Calx.Bench.Benchmarks;

/// <summary>A class's spread within and between: ten groups of three results, and twelve results with their uncertainties.</summary>
public class RandomEffectsBenchmark
{
    private readonly double[][] groups = ClassData.Groups(1, 10, 3);
    private readonly double[] values = [.. ClassData.Groups(2, 12, 1).Select(group => group[0])];
    private readonly double[] uncertainties = [.. Enumerable.Range(0, 12).Select(i => 0.02 + (0.001 * i))];

    [Benchmark]
    public GroupSpreadResult GroupsByLikelihood() => RandomEffects.FromGroups(groups);

    [Benchmark]
    public GroupSpreadResult GroupsByAnova() => RandomEffects.FromGroupsByAnova(groups);

    [Benchmark]
    public PooledResult KnownUncertainties() => RandomEffects.FromKnownUncertainties(values, uncertainties);

    [Benchmark]
    public RobustResult AlgorithmA() => Robust.AlgorithmA(values);
}
