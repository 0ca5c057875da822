using BenchmarkDotNet.Running;
using Calx.Bench;
using Calx.Bench.Benchmarks;
using Calx.Bench.Beside;
using Calx.Bench.Keeping;
using Calx.Bench.Serving;

// A line a capability: its name, its BenchmarkDotNet class, and its comparison with a peer.
Capability[] capabilities =
[
    new("montecarlo", typeof(MonteCarloBenchmark), MonteCarloBeside.Run),
    new("normals", typeof(RandomStreamBenchmark), RandomStreamBeside.Run),
    new("random-effects", typeof(RandomEffectsBenchmark), RandomEffectsBeside.Run),
    new("york", typeof(YorkBenchmark), YorkBeside.Run),
    new("bootstrap", typeof(BootstrapBenchmark), BootstrapBeside.Run),
    new("balancing", typeof(BalancingBenchmark), BalancingBeside.Run),
    new("molar-mass", typeof(MolarMassBenchmark), MolarMassBeside.Run),
    new("posterior", typeof(PosteriorBenchmark), PosteriorBeside.Run),
    new("lesson", typeof(LessonBenchmark), LessonBeside.Run),
    new("plan", typeof(PlanBenchmark), PlanBounds.Run),
    new("class-file", typeof(ClassFileBenchmark), ClassFileBounds.Run),
    new("watch", typeof(WatchBenchmark), WatchBounds.Run),
    new("papers", typeof(PapersBenchmark), PapersBounds.Run),
    new("marking", typeof(MarkingBenchmark), MarkingBounds.Run),
    new("series", typeof(SeriesBenchmark), SeriesBeside.Run),
    new("learning", typeof(LearningBenchmark), LearningBounds.Run),
];

// A whole process is measured, which BenchmarkDotNet does not do.
if (args is ["start-up"])
{
    return StartUp.Measure();
}

if (args is ["serve", .. string[] words])
{
    return await ServeLoad.Measure(words);
}

if (args is ["store", .. string[] connections])
{
    return await StoreRate.Measure(connections);
}

Capability? chosen = capabilities.FirstOrDefault(capability => args.Length > 0 && capability.Name == args[0]);
if (chosen is null)
{
    Console.Error.WriteLine("usage: dotnet run -c Release --project bench -- NAME [--beside [PASSES]]");
    Console.Error.WriteLine($"NAME is one of: start-up, serve, store, {string.Join(", ", capabilities.Select(capability => capability.Name))}");
    return 2;
}

if (args.Contains("--beside"))
{
    return chosen.Beside(new SideBySide(args.Last())) ? 0 : 1;
}

// In this process: the generated project of the usual toolchain does not find one whose assembly has another name.
BenchmarkRunner.Run(chosen.Benchmark, args: ["--inProcess", .. args[1..]]);
return 0;
