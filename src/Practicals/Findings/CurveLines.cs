using Calx.Measurement.Statistics.Series;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>What the curves of a class's groups say, line by line, as a report or a terminal shows it.</summary>
public static class CurveLines
{
    /// <summary>The order of one group in a few words.</summary>
    public static string OrderOf(GroupFindings group, ClassFindings findings)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(findings);
        return group.Curve is null ? "-" : new CurveWords(findings.Practical, findings.Language).Brief(group.Curve.Order);
    }

    /// <summary>Groups without a curve and why, then points that do not follow theirs; a line each.</summary>
    public static IEnumerable<string> Of(ClassFindings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var words = new CurveWords(findings.Practical, findings.Language);
        foreach (GroupFindings group in findings.Groups.Where(g => g.Curve is { Reason: not null }))
        {
            yield return $"{GroupReadings.InSentence(group.Name, findings.Language)}: {group.Curve!.Reason}";
        }

        foreach (GroupFindings group in findings.Groups.Where(g => g.Curve is { Disturbances.Count: > 0, Series: not null }))
        {
            IEnumerable<string> all = group.Curve!.Disturbances.Select(d => words.Disturbed(d, group.Curve.Series!));
            yield return $"{GroupReadings.InSentence(group.Name, findings.Language)}: {string.Join("; ", all)}.";
        }
    }
}
