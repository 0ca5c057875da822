using Calx.Papers.Plans;
using Calx.Practicals.Planning;

namespace Calx.App.Output;

/// <summary>The plan with charts, written to disk whole or not at all.</summary>
internal static class PlanFile
{
    /// <summary>Writes to the file that the person named, replacing an older one; tells a fault on standard error.</summary>
    public static bool TryWrite(Plan plan, PlanStock stock, string path, Surroundings surroundings)
    {
        try
        {
            NewFile.Replace(surroundings.FullPath(path), PlanReport.Html(plan, plan.Sentences, stock: stock), surroundings.Cancellation());
            surroundings.Error.WriteLine($"The plan is in {path}");
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine($"{path}:1:1: the plan cannot be written there ({NewFile.ReasonOf(failure)})");
            return false;
        }
    }
}
