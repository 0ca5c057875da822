using Calx.App.Checking;
using Calx.Practicals.Checking;

namespace Calx.App.Output;

/// <summary>A check of a practical's file in words: findings to standard error, what the file implies to standard output.</summary>
internal static class CheckText
{
    /// <summary>Every finding, a line each.</summary>
    public static void WriteFindings(TextWriter error, FullCheck check)
    {
        foreach (CheckFinding finding in check.Checked.Findings)
        {
            error.WriteLine(finding.In(check.File));
        }

        foreach (TrialStep step in check.Trial.Where(t => t.Failure is not null))
        {
            error.WriteLine($"{check.File}:1:1: {Said(step.What)} fails: {step.Failure}");
        }

        if (!check.Checked.IsWhole)
        {
            error.WriteLine($"{check.File}: some checks across the file wait until these faults are put right; check it again then");
        }
    }

    /// <summary>The theory values, and the verdict.</summary>
    public static void Write(TextWriter output, FullCheck check)
    {
        if (check.Checked.Ideals.Count > 0)
        {
            output.WriteLine("When the reaction is complete and nothing goes wrong (hold it against your book):");
            var columns = new Columns("lrl");
            foreach (IdealValue ideal in check.Checked.Ideals)
            {
                string unit = ideal.Quantity.Unit == "1" ? "" : ideal.Quantity.Unit;
                columns.Add(ideal.Quantity.Label, ideal.Value is double value ? Figure.Significant(value, 5) : "no value", unit);
            }

            columns.Write(output);
        }

        if (check.Checked.Practical is not { } practical)
        {
            return;
        }

        if (check.Trial.Count > 0 && check.Trial.All(t => t.Failure is null))
        {
            output.WriteLine("Tried out on four invented groups: simulate, analyse and mark work.");
        }

        output.WriteLine(check.IsInOrder
            ? $"{check.File}: {practical.Title} (version {practical.Version}) is in order."
            : $"{check.File}: {practical.Title} (version {practical.Version}) can be used, but not everything is in order.");
    }

    private static string Said(string what) => what switch
    {
        "simulate" => "inventing a class",
        "read" => "reading a class's table",
        "analyse" => "analysing a class",
        _ => "marking a class",
    };
}
