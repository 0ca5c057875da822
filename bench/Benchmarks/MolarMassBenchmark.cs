using BenchmarkDotNet.Attributes;
using Calx.Bench.Beside;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;

namespace Calx.Bench.Benchmarks;

/// <summary>210 formulas of school substances: read alone, and read with molar mass and uncertainty.</summary>
public class MolarMassBenchmark
{
    private readonly string[] formulas = PeerData.Words("formulas.txt");

    [Benchmark]
    public int Read() => formulas.Sum(formula => Formula.Parse(formula).Value.Composition.Count);

    [Benchmark]
    public double ReadAndWeigh() => formulas.Sum(
        formula => Formula.Parse(formula).Value.MolarMass(AtomicWeights.Iupac2024).StandardUncertainty);
}
