using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Papers.Tables;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Bench.Benchmarks;

/// <summary>From the bytes of a class's file to its findings.</summary>
[MemoryDiagnoser]
public class ClassFileBenchmark
{
    private readonly Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
    private byte[] file = [];

    [Params(12, 2_500, 10_000)]
    public int Groups { get; set; }

    [GlobalSetup]
    public void Make() => file = ClassFileText.Bytes(Groups);

    [Benchmark]
    public ClassFindings Analyse() => Analyse(practical, file);

    internal static ClassFindings Analyse(Practical practical, byte[] file)
    {
        var opened = (TableFile.Opened)TableFile.Read(new MemoryStream(file));
        var taken = (ClassReading.Taken)ClassTableReader.Read(opened.Sheets, practical);
        return ClassAnalysis.Of(practical, taken.Readings, AtomicWeights.Iupac2024, new AnalysisOptions(Causes: false, []));
    }
}
