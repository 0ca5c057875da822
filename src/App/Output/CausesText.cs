using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference.Posterior;

namespace Calx.App.Output;

/// <summary>Which groups have something to tell of causes: all the others went as expected.</summary>
internal static class CausesText
{
    /// <summary>Shared causes first, then a line a group.</summary>
    public static IEnumerable<string> Lines(ClassFindings findings)
    {
        foreach (SharedCause shared in findings.Class.SharedCauses)
        {
            yield return shared.Sentence;
        }

        foreach (GroupFindings group in findings.Groups.Where(IsTold))
        {
            yield return $"{group.Name}: {group.Diagnosis!.ForTeacher}";
        }
    }

    private static bool IsTold(GroupFindings group) =>
        group.Diagnosis is not null && (group.IsAnomalous || group.Diagnosis.First.Cause != Causes.AsExpected);
}
