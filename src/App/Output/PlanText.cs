using System.Globalization;
using Calx.App.Commands;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.App.Output;

/// <summary>A plan on the terminal, as a teacher reads it: words first, then the tables behind them.</summary>
internal static class PlanText
{
    public static void Write(TextWriter output, PlanAnswer answer)
    {
        PlanSettings settings = answer.Choice.Settings;
        string groups = settings.Groups == 1 ? "one group" : string.Create(CultureInfo.InvariantCulture, $"{settings.Groups} groups");
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{settings.Practical.Title}: a plan for {groups} in {settings.Minutes:0.#} min"));
        if (answer.Plan is not Plan plan)
        {
            output.WriteLine();
            WrappedText.Write(output, $"Not planned: {answer.Reason}.", first: "  ", then: "  ");
            return;
        }

        WrappedText.Write(output, Means(answer, plan), first: "  ", then: "  ");
        output.WriteLine();
        foreach (string sentence in plan.Sentences)
        {
            WrappedText.Write(output, sentence, first: "  - ", then: "    ");
        }

        PlanAmountText.Write(output, plan);
        PlanLessonText.Write(output, plan);
        WriteKit(output, answer, plan);
        WriteCautions(output, settings.Practical);
    }

    private static string Means(PlanAnswer answer, Plan plan) => string.Create(
        CultureInfo.InvariantCulture,
        $"{string.Join("; ", plan.Settings.InWords)}. From {plan.Lesson.Lessons} simulated lessons, seed {answer.Seed}; rates and times are mostly judgement.");

    private static void WriteKit(TextWriter output, PlanAnswer answer, Plan plan)
    {
        WrappedText.Heading(output, "Kit for the class");
        PlanStock stock = answer.Choice.Stock;
        bool priced = stock.HasPrices;
        var columns = new Columns("lrr" + (priced ? "r" : "") + "l");
        columns.Add(["", "needed", "spare", .. priced ? ["used or broken"] : Array.Empty<string>(), ""]);
        foreach (KitCount kit in plan.Kit)
        {
            string unit = kit.Item.Need.Unit is string u ? " " + u : "";
            columns.Add(
            [
                kit.Item.Label,
                Amount(kit.Amount) + unit,
                Amount(kit.SpareAmount) + unit,
                .. priced ? [stock.CostOf(kit) is double cost ? Figure.Fixed(cost, 2) : "-"] : Array.Empty<string>(),
                Length(answer, kit),
            ]);
        }

        columns.Write(output);
        if (stock.CostOf(plan.Kit) is double all)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  What is used up or breaks on average, by the prices given: {all:F2}."));
        }

        if (plan.Kit.Any(k => k.Item.Need.IsCut) && stock.GramsPerMetre is null)
        {
            WrappedText.Write(output, "Weigh one metre of your own stock and give it with --metre: then the length to cut is told.", first: "  ", then: "  ");
        }
    }

    private static string Length(PlanAnswer answer, KitCount kit)
    {
        if (answer.Choice.Stock is not { GramsPerMetre: double metre } stock || stock.LengthInMetres(kit) is not double length)
        {
            return "";
        }

        double each = 100 * answer.Choice.Settings.SampleInGrams / metre;
        return string.Create(CultureInfo.InvariantCulture, $"{each:F0} cm each, {length:F1} m in all");
    }

    private static string Amount(double amount) => amount.ToString("0.###", CultureInfo.InvariantCulture);

    private static void WriteCautions(TextWriter output, Practical practical)
    {
        WrappedText.Heading(output, "Cautions (your employer's risk assessment and local rules decide)");
        foreach (Hazard hazard in practical.Hazards)
        {
            WrappedText.Write(output, $"{hazard.Of}: {hazard.Harm}. {char.ToUpperInvariant(hazard.Control[0])}{hazard.Control[1..]}.", first: "  - ", then: "    ");
        }
    }
}
