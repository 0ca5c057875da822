using System.Globalization;
using Calx.App.Commands;
using Calx.Measurement.Uncertainty;

namespace Calx.App.Output;

/// <summary>A propagated model on the terminal.</summary>
internal static class PropagationText
{
    private const string None = "none";

    public static void Write(TextWriter output, PropagationAnswer answer)
    {
        output.WriteLine($"{answer.Model.ResultName} = {answer.Model.Model}");
        output.WriteLine();
        WriteResults(output, answer);
        if (answer.FirstOrder is UncertainValue first)
        {
            WriteBudget(output, first);
        }

        output.WriteLine();
        WrappedText.Write(output, answer.ValidationInWords, "", "");
    }

    private static void WriteResults(TextWriter output, PropagationAnswer answer)
    {
        double coverage = answer.Settings.Coverage;
        string percent = Figure.Significant(100 * coverage, 4);
        var columns = new Columns("lll");
        columns.Add("", "value ± standard uncertainty", $"{percent} % interval");
        if (answer.FirstOrder is UncertainValue first)
        {
            CoverageInterval interval = first.Interval(coverage);
            columns.Add(
                "first order",
                Figure.WithUncertainty(first.Value, first.StandardUncertainty),
                Ends(interval, first.StandardUncertainty) + Freedom(first, coverage));
        }
        else
        {
            columns.Add("first order", None, "");
        }

        columns.Add(
            "second order",
            answer.SecondOrderUncertainty is double second
                ? $"standard uncertainty {Figure.Rounded(second, second)}"
                : None,
            "");
        if (answer.Drawn is MonteCarloResult drawn)
        {
            string draws = drawn.Draws.ToString("N0", CultureInfo.InvariantCulture).Replace(',', ' ');
            columns.Add(
                $"{draws} draws",
                Figure.WithUncertainty(drawn.Value, drawn.StandardUncertainty),
                $"{Ends(drawn.Shortest, drawn.StandardUncertainty)} shortest, {Ends(drawn.Symmetric, drawn.StandardUncertainty)} symmetric");
        }
        else
        {
            columns.Add("draws", None, "");
        }

        columns.Write(output);
        WriteReason(output, "first order", answer.FirstOrderReason);
        WriteReason(output, "second order", answer.SecondOrderReason);
        WriteReason(output, "draws", answer.DrawnReason);
    }

    private static void WriteReason(TextWriter output, string way, string? reason)
    {
        if (reason is not null)
        {
            output.WriteLine($"  No result by {way}: {reason}.");
        }
    }

    private static string Ends(CoverageInterval interval, double uncertainty) =>
        $"{Figure.Rounded(interval.Low, uncertainty)} to {Figure.Rounded(interval.High, uncertainty)}";

    private static string Freedom(UncertainValue value, double coverage) => double.IsFinite(value.DegreesOfFreedom)
        ? string.Create(CultureInfo.InvariantCulture, $" (k = {value.CoverageFactor(coverage):F2}, {value.DegreesOfFreedom:F1} degrees of freedom)")
        : string.Create(CultureInfo.InvariantCulture, $" (k = {value.CoverageFactor(coverage):F2})");

    private static void WriteBudget(TextWriter output, UncertainValue value)
    {
        output.WriteLine();
        var columns = new Columns("lrrr");
        columns.Add("input", "sensitivity", "contribution", "share of the variance");
        foreach (BudgetEntry entry in value.Budget)
        {
            columns.Add(
                entry.Input.Name,
                Figure.Significant(entry.Sensitivity, 4),
                Figure.Significant(entry.Contribution, 3),
                Figure.Fixed(100 * entry.Share, 1) + " %");
        }

        columns.Write(output);
    }
}
