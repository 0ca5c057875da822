using Calx.App.Live;
using Calx.Practicals.Findings;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>What a lesson's readings show.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Class">Its class.</param>
/// <param name="Findings">The findings, or null while nothing that counts was typed.</param>
/// <param name="WithCauses">Whether causes and odd results are shown: the class sees the teacher's screen.</param>
public sealed record FindingsModel(LessonView View, SchoolClass Class, ClassFindings? Findings, bool WithCauses)
{
    /// <summary>Which groups are not counted, in sentences.</summary>
    public IReadOnlyList<string> Uncounted => UncountedWords.Of(LessonFindings.Uncounted(View));
}
