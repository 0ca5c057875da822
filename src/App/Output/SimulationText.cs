using System.Globalization;
using Calx.App.Commands;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Output;

/// <summary>A prediction on the terminal.</summary>
internal static class SimulationText
{
    public static void Write(TextWriter output, SimulationAnswer answer)
    {
        Practical practical = answer.Choice.Practical;
        if (answer.Prediction is not Prediction prediction)
        {
            output.WriteLine($"{practical.Title}: not simulated. {Sentence(answer.Reason!)}");
            return;
        }

        output.WriteLine($"{practical.Title}: what groups will probably weigh and find");
        output.WriteLine($"  {Circumstances(answer.Choice)}");
        output.WriteLine($"  From {prediction.Draws} simulated groups, faults and slips of the pen included; seed {answer.Seed}.");
        WriteReadings(output, practical, prediction, answer.Choice.Plan.Balance.Decimals);
        WriteQuantities(output, prediction, answer.Arms.Count == 0 ? "Results" : "Results of all groups together");
        foreach (ArmOutlook arm in answer.Arms)
        {
            WriteQuantities(output, arm.Prediction, string.Create(CultureInfo.InvariantCulture, $"Results of {arm.Groups} groups: {arm.Label}"));
        }
    }

    private static void WriteReadings(TextWriter output, Practical practical, Prediction prediction, int decimals)
    {
        bool weighed = practical.Readings.All(r => r.IsWeighing);
        Heading(output, weighed ? "Readings / g" : "Readings");
        Table(output, prediction.Readings.Select(r => (
            (weighed ? r.Label : $"{r.Label} / {r.Unit}") + Taken(r.Written), (PredictedValue?)r.Written, r.Decimals ?? decimals)));
        if (practical.Parts.Count > 0)
        {
            Heading(output, $"The same less the true mass of {string.Join(" and ", practical.Parts.Select(p => p.Label))} / g");
            Table(output, prediction.Readings.Where(r => r.WithoutParts is not null).Select(r => (r.Label, r.WithoutParts, decimals + 1)));
        }
    }

    private static void WriteQuantities(TextWriter output, Prediction prediction, string heading)
    {
        Heading(output, heading);
        Table(output, prediction.Quantities.Select(q => (WithUnit(q.Quantity), q.Value, q.Value is null ? 0 : DecimalsOf(q.Value))));
    }

    private static void Table(TextWriter output, IEnumerable<(string Name, PredictedValue? Value, int Decimals)> rows)
    {
        var columns = new Columns("lrll");
        columns.Add("", "median", "half of the groups", "95 of 100 groups");
        foreach ((string name, PredictedValue? value, int decimals) in rows)
        {
            columns.Add(
                name,
                value is null ? "-" : Figure.Fixed(value.Median, decimals),
                value is null ? "not from these readings" : Between(value.Half, decimals),
                value is null ? "" : Between(value.Most, decimals));
        }

        columns.Write(output);
    }

    private static string Circumstances(SimulationChoice choice)
    {
        Balance balance = choice.Plan.Balance;
        string[] parts =
        [
            string.Create(CultureInfo.InvariantCulture, $"Balance: {balance.ResolutionInGrams:0.########} g; repeats scatter by {balance.RepeatabilityInGrams:0.########} g"),
            .. PlanSettings.MostHeatings(choice.Practical) > 1 ? [Heatings(choice)] : Array.Empty<string>(),
            .. choice.Plan.Cause is string cause ? [$"only '{cause}' counts"] : Array.Empty<string>(),
            .. choice.Learned is AcceptedNumbers learned ? [LearnedText.Of(learned)] : Array.Empty<string>(),
            .. choice.Practical.Conditions.Where(c => choice.Conditions.Contains(c.Id)).Select(c => c.Label),
        ];
        return string.Join("; ", parts) + ".";
    }

    private static string Heatings(SimulationChoice choice)
    {
        string done = choice.Practical.Findings.ConstantMass?.By == RoundsBy.Drying ? "dried" : "heated";
        return choice.Plan.Rounds switch
        {
            0 => choice.Practical.Findings.ConstantMass is null ? $"{done} once" : $"{done} until two weighings agree",
            1 => $"{done} once",
            int rounds => string.Create(CultureInfo.InvariantCulture, $"{done} {rounds} times"),
        };
    }

    private static string Taken(PredictedValue value) => value.Share >= 1
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $" (in {100 * value.Share:0} of 100 groups)");

    private static string Between((double Low, double High) interval, int decimals) =>
        $"{Figure.Fixed(interval.Low, decimals)} to {Figure.Fixed(interval.High, decimals)}";

    /// <summary>Two figures of half the width that holds half of the groups.</summary>
    private static int DecimalsOf(PredictedValue value)
    {
        double half = (value.Half.High - value.Half.Low) / 2;
        return half > 1e-9 ? Figure.DecimalsFor(half) : 4;
    }

    private static string WithUnit(QuantityDefinition quantity) =>
        quantity.Unit == "1" ? quantity.Label : $"{quantity.Label} / {quantity.Unit}";

    private static string Sentence(string reason) => char.ToUpperInvariant(reason[0]) + reason[1..] + ".";

    private static void Heading(TextWriter output, string text)
    {
        output.WriteLine();
        output.WriteLine(text);
    }
}
