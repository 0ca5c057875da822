using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>What to put out, with spares.</summary>
internal static class KitSection
{
    public static void Write(StringBuilder page, Plan plan, PlanStock stock, PlanTexts texts)
    {
        if (plan.Kit.Count == 0)
        {
            return;
        }

        (string, bool)[] cost = stock.HasPrices ? [(texts.CostColumn, true)] : [];
        var table = new ReportTable("kit", texts.KitHeading, [(texts.ItemColumn, false), (texts.NeededColumn, true), (texts.SpareColumn, true), (texts.TotalColumn, true), .. cost]);
        bool cut = stock.GramsPerMetre is null && plan.Kit.Any(k => k.Item.Need.IsCut);
        string[] notes =
        [
            texts.Spares,
            .. cut ? [texts.WeighMetre] : (string[])[],
            .. stock.CostOf(plan.Kit) is double all ? [texts.CostOnAverage(all.ToString("F2", CultureInfo.InvariantCulture))] : (string[])[],
        ];
        table.Under(string.Join(' ', notes));
        foreach (KitCount kit in plan.Kit)
        {
            string unit = kit.Item.Need.Unit is string written ? $" {written}" : string.Empty;
            string length = stock is { GramsPerMetre: double metre } && stock.LengthInMetres(kit) is double metres ? $"\n{texts.CutLengths((100 * plan.Settings.SampleInGrams / metre).ToString("F0", CultureInfo.InvariantCulture), KitAmount.Of(metres))}" : string.Empty;
            string[] priced = stock.HasPrices ? [stock.CostOf(kit) is double each ? each.ToString("F2", CultureInfo.InvariantCulture) : "–"] : [];
            table.Add([kit.Item.Label, KitAmount.Of(kit.Amount) + unit, KitAmount.Of(kit.SpareAmount) + unit, KitAmount.Of(kit.Total) + unit + length, .. priced]);
        }

        table.Write(page);
    }
}
