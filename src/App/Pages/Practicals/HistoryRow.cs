using Calx.App.Pages.Lessons;
using Calx.Practicals.Findings;
using Calx.Practicals.Findings.History;

namespace Calx.App.Pages.Practicals;

/// <summary>What a class found in one lesson.</summary>
/// <param name="Row">The lesson.</param>
/// <param name="Findings">What its readings show.</param>
public sealed record HistoryRow(LessonRow Row, ClassFindings Findings)
{
    /// <summary>The class's value, or null where its readings do not give one.</summary>
    public ClassQuantity? Key => Findings.Class.Find(Findings.Practical.Findings.Key);

    /// <summary>The same for the history, or null.</summary>
    public LessonResult? Result => LessonResult.Of($"{Row.Class.Name} {Row.Class.Year}", Row.Lesson.Date, Findings);

    /// <summary>Groups that typed readings, their own or not.</summary>
    public int Groups => Findings.Groups.Count + Findings.Readings.Uncounted.Count;

    /// <summary>Groups with an odd result.</summary>
    public int Odd => Findings.Groups.Count(g => g.IsAnomalous);
}
