namespace Calx.Practicals.Drafting;

/// <summary>Labels of a draft's readings.</summary>
/// <param name="Empty">Before the sample goes in.</param>
/// <param name="Before">With the sample, before anything happens.</param>
/// <param name="After">Afterwards.</param>
/// <param name="Again">The second time on.</param>
internal sealed record DraftLabels(string Empty, string Before, string After, string Again)
{
    public static DraftLabels Of(DraftPlan plan)
    {
        string sample = plan.Equation.Sample.Name;
        return plan.Family switch
        {
            DraftFamily.Heated => new($"Mass of empty {plan.Vessel}", $"Mass of {plan.Vessel} and {sample}", "Mass after heating", "Mass after reheating"),
            DraftFamily.Gas => new($"Mass of {plan.Vessel} with solution, and empty boat", $"Mass with {sample} in the boat", "Mass when the gas has left", "Mass after standing again"),
            DraftFamily.Closed => new($"Mass before the {sample} goes in", "Mass before mixing", "Mass after mixing", "Mass after waiting again"),
            _ => new($"Mass of empty {plan.Vessel}", $"Mass of {plan.Vessel} and {sample}", $"Mass of {plan.Vessel} and dry {plan.Equation.Product!.Name}", "Mass after drying again"),
        };
    }
}
