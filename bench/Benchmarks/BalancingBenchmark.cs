using BenchmarkDotNet.Attributes;
using Calx.Bench.Beside;
using Calx.Chemistry.Equations;

namespace Calx.Bench.Benchmarks;

/// <summary>64 equations read and balanced; and the one whose elementary balancings must be searched for.</summary>
public class BalancingBenchmark
{
    private readonly (string Text, string Wanted)[] equations = EquationList.Read();

    [Benchmark]
    public BalancingResult[] All() => EquationList.Balance(equations);

    [Benchmark]
    public BalancingResult Several() => Equation.Parse("H2O2 + KMnO4 + H2SO4 -> K2SO4 + MnSO4 + O2 + H2O").Value.Balance();
}
