using BenchmarkDotNet.Attributes;
using Calx.Measurement.Distributions;

namespace Calx.Bench.Benchmarks;

/// <summary>A block of 4096 draws.</summary>
public class RandomStreamBenchmark
{
    private readonly RandomStream stream = new(1, 0);
    private readonly double[] block = new double[4096];

    [Benchmark]
    public void Numbers() => stream.Fill(block);

    [Benchmark]
    public void Normal() => stream.FillNormal(block);
}
