using Calx.Papers.Reports;
using Calx.Practicals.Findings;

namespace Calx.App.Output;

/// <summary>The report with charts, written to disk whole or not at all.</summary>
internal static class ReportFile
{
    /// <summary>Writes to the file that the person named, replacing an older one; tells a fault on standard error.</summary>
    public static bool TryWrite(ClassFindings findings, string className, string path, Surroundings surroundings)
    {
        string html = ClassReport.Html(findings, new ReportHeading(Path.GetFileName(className), date: null, inventedData: false));
        try
        {
            NewFile.Replace(surroundings.FullPath(path), html, surroundings.Cancellation());
            surroundings.Error.WriteLine($"The report is in {path}");
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine($"{path}:1:1: the report cannot be written there ({NewFile.ReasonOf(failure)})");
            return false;
        }
    }
}
