using Calx.Papers.Texts;

namespace Calx.Papers.Reports;

/// <summary>What stands at the head of a report.</summary>
public sealed class ReportHeading
{
    /// <summary>Names the class.</summary>
    /// <param name="className">The class's or the file's name; not empty.</param>
    /// <param name="date">The date as it is to be printed, or null for none: the library has no clock.</param>
    /// <param name="inventedData">Whether the readings are invented, which the report then says in large type.</param>
    /// <param name="language">The language of the report's own texts; null for British English.</param>
    public ReportHeading(string className, string? date, bool inventedData, PaperLanguage? language = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(className);
        ClassName = className;
        Date = date;
        InventedData = inventedData;
        Language = language ?? PaperLanguage.BritishEnglish;
    }

    /// <summary>The class's or the file's name.</summary>
    public string ClassName { get; }

    /// <summary>The date as printed, or null.</summary>
    public string? Date { get; }

    /// <summary>Whether the readings are invented.</summary>
    public bool InventedData { get; }

    /// <summary>The language of the report's own texts.</summary>
    public PaperLanguage Language { get; }
}
