using Calx.Papers.Texts;

namespace Calx.Papers.Reports;

/// <summary>Who looks at a report or a chart, and so what it may show. The parts that are not shown are not in the page at
/// all, hidden or otherwise.</summary>
/// <param name="Causes">Whether causes, odd results and what people typed are shown.</param>
/// <param name="Accepted">Whether accepted values, the line of the equation and the formula found are shown.</param>
/// <param name="Names">Whether groups go by their names; otherwise they have numbers.</param>
public sealed record ReportView(bool Causes, bool Accepted, bool Names)
{
    /// <summary>The language of the own texts of report and charts; British English where nothing else is said.</summary>
    public PaperLanguage Language { get; init; } = PaperLanguage.BritishEnglish;

    /// <summary>The teacher's: all of it.</summary>
    public static ReportView Teacher { get; } = new(Causes: true, Accepted: true, Names: true);

    /// <summary>What a class or a projector may see before the teacher shows more.</summary>
    public static ReportView Class { get; } = new(Causes: false, Accepted: false, Names: false);
}
