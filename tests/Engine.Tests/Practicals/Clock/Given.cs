using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>Lessons for the tests.</summary>
internal static class Given
{
    public static readonly AtomicWeights Weights = AtomicWeights.Iupac2024;

    public static readonly Balance Centigram = new(0.01);

    public static Practical Magnesium => BuiltInPracticals.Find("magnesium-oxide")!;

    public static IReadOnlyList<Balance> Balances(int number, double step = 0.01) => [.. Enumerable.Repeat(new Balance(step), number)];

    /// <summary>The magnesium practical with a lesson of other steps: nobody late, nothing broken unless the steps say so.</summary>
    public static Practical WithSteps(string steps, string classroom = "{ gasOff: 0, late: 0, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }", bool breaks = false)
    {
        string text = WithoutPapers(Magnesium.SourceText);
        if (!breaks)
        {
            text = text.Replace("breaks: 0.04, startsAgain: true", "breaks: 0.04", StringComparison.Ordinal);
        }

        int from = text.IndexOf("# Times in min", StringComparison.Ordinal);
        int to = text.IndexOf("kit:\n  - {", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read($"{text[..from]}steps:\n{steps}\nclassroom: {classroom}\n\n{text[to..]}", "steps.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }

    /// <summary>Drawings and papers tell of the practical's own steps.</summary>
    private static string WithoutPapers(string text)
    {
        int drawings = text.IndexOf("\ndrawings:", StringComparison.Ordinal), answers = text.IndexOf("\n# Answers", StringComparison.Ordinal);
        int sheet = text.IndexOf("\n# What students read on paper", StringComparison.Ordinal);
        return text[..drawings] + text[answers..sheet];
    }

    /// <summary>Simulates lessons of a plan.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="lessons">How many.</param>
    /// <param name="decided">Whether readings decide on reheats; otherwise every group heats as often as planned.</param>
    /// <param name="seed">Which of the possible lessons.</param>
    /// <param name="threads">Threads.</param>
    public static LessonForecast Forecast(PlanSettings settings, int lessons, bool decided = true, ulong seed = 1, int threads = -1)
    {
        var tables = new PlanTables(Weights);
        return new LessonSimulator(
            settings, tables.Durations, decided ? tables.DrawersOf(settings) : [], seed, new ParallelOptions { MaxDegreeOfParallelism = threads }).Forecast(lessons);
    }
}
