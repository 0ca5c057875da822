using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>A lesson that runs, for the tests: the magnesium practical, vessels fired by the technician, twelve groups.</summary>
internal static class Bench
{
    public static readonly Balance Centigram = new(0.01);

    public static Practical Magnesium => BuiltInPracticals.Find("magnesium-oxide")!;

    /// <summary>The same with vessels that do not break.</summary>
    public static Practical Unbroken { get; } = PracticalReader.Read(
        Magnesium.SourceText.Replace("breaks: 0.04, startsAgain: true", "breaks: 0.04", StringComparison.Ordinal), "unbroken.yaml").Practical!;

    public static PlanSettings Plan { get; } =
        new PlanSettings(Magnesium, 12, [Centigram, Centigram], 100).WithPrepared(true);

    public static LessonWatch Watch { get; } = new(Plan, AtomicWeights.Iupac2024, seed: 5);

    public static LessonMoment At(double now, double bell = 100, double? workBegan = 10, double? lastHeating = 70) => new(now, bell, workBegan, lastHeating);

    public static WrittenNumber Written(string text) => WrittenNumber.TryParse(text, out WrittenNumber number)
        ? number : throw new ArgumentException(text);

    /// <summary>A group with readings such as <c>empty=28.60@15</c>: id, number, and minute where it was received.</summary>
    public static GroupAtWork Group(
        string readings,
        double? lit = null,
        double? flameOut = null,
        ToldStep? told = null,
        OwnDecision? decided = null,
        int number = 1,
        IReadOnlyList<string>? observations = null,
        GroupCondition? condition = null,
        GroupCalls? calls = null,
        Balance? balance = null,
        Practical? practical = null)
    {
        var taken = new List<TakenReading>();
        var at = new Dictionary<string, double>();
        foreach (string one in readings.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] parts = one.Split('=', '@');
            ReadingDefinition definition = (practical ?? Magnesium).Readings.First(r => parts[0].TrimEnd('2', '3') == r.Id);
            int occurrence = parts[0].Length > definition.Id.Length ? parts[0][^1] - '0' : 1;
            taken.Add(new TakenReading(definition.Id, occurrence, Written(parts[1])));
            if (parts.Length > 2)
            {
                at[parts[0]] = double.Parse(parts[2], System.Globalization.CultureInfo.InvariantCulture);
            }
        }

        return new GroupAtWork(
            number,
            1,
            balance ?? Centigram,
            new GroupReadings($"G{number}", null, taken, remarks: new GroupRemarks(observations: observations)),
            new GroupMoments(at, lit, flameOut, told, decided),
            condition,
            calls);
    }
}
