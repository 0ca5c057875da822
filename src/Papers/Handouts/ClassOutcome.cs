using Calx.Papers.Texts;
using Calx.Practicals.Findings;

namespace Calx.Papers.Handouts;

/// <summary>What a class found, for the papers that come after a lesson.</summary>
/// <param name="Findings">What its readings show.</param>
/// <param name="IsInvented">Whether no such class took these readings, which the papers then say.</param>
/// <param name="ShowsAccepted">Whether the sheet for the wall tells the accepted value and what follows from it: which equation or formula
/// the class's value fits.</param>
public sealed record ClassOutcome(ClassFindings Findings, bool IsInvented = false, bool ShowsAccepted = false)
{
    /// <summary>What has to be said before anything else, or null: that readings are invented or simulated.</summary>
    internal string? Label(ClassReportTexts texts) => IsInvented ? texts.Invented : Findings.Readings.IsSimulated ? texts.Simulated : null;
}
