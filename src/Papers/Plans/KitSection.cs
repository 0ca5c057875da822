using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>What to put out, with spares.</summary>
internal static class KitSection
{
    public static void Write(StringBuilder page, Plan plan, PlanStock stock)
    {
        if (plan.Kit.Count == 0)
        {
            return;
        }

        (string, bool)[] cost = stock.HasPrices ? [("cost", true)] : [];
        var table = new ReportTable("kit", "To put out", [("item", false), ("needed", true), ("spare", true), ("in all", true), .. cost]);
        bool cut = stock.GramsPerMetre is null && plan.Kit.Any(k => k.Item.Need.IsCut);
        table.Under("Spares are enough for what breaks 95 times in 100." + (cut ? " Weigh a metre of what is cut from a coil: its length follows from that." : string.Empty) + Cost(plan, stock));
        foreach (KitCount kit in plan.Kit)
        {
            string unit = kit.Item.Need.Unit is string written ? $" {written}" : string.Empty;
            string length = stock is { GramsPerMetre: double metre } && stock.LengthInMetres(kit) is double metres ? string.Create(CultureInfo.InvariantCulture, $"\n{100 * plan.Settings.SampleInGrams / metre:F0} cm each, {KitAmount.Of(metres)} m") : string.Empty;
            string[] priced = stock.HasPrices ? [stock.CostOf(kit) is double each ? each.ToString("F2", CultureInfo.InvariantCulture) : "–"] : [];
            table.Add([kit.Item.Label, KitAmount.Of(kit.Amount) + unit, KitAmount.Of(kit.SpareAmount) + unit, KitAmount.Of(kit.Total) + unit + length, .. priced]);
        }

        table.Write(page);
    }

    private static string Cost(Plan plan, PlanStock stock) => stock.CostOf(plan.Kit) is double all
        ? string.Create(CultureInfo.InvariantCulture, $" What is used up or breaks on average costs {all:F2}, by the prices given.")
        : string.Empty;
}
