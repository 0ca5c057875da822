using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning.Ways;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Practicals;

/// <summary>A practical with its plan.</summary>
/// <param name="Form">The form, filled in.</param>
/// <param name="Plan">The plan, or null where the form has faults.</param>
/// <param name="Ways">Ways out that were looked for, or null where none were.</param>
/// <param name="Signed">The safety check of just this plan, or null.</param>
/// <param name="Fault">What was wrong with the last try to sign, or null.</param>
public sealed record PlanModel(PlanForm Form, Plan? Plan, IReadOnlyList<PlanWay>? Ways, Signature? Signed, string? Fault)
{
    /// <summary>The practical.</summary>
    public Practical Practical => Form.Practical;

    /// <summary>Whether it is the teacher's own, which can be edited.</summary>
    public bool IsOwn => BuiltInPracticals.Find(Practical.Id) is null;

    /// <summary>The plan as the query of an address.</summary>
    public string Query => PlanQuery.Of(Form.Words);

    /// <summary>Whether there is reason to look for ways out.</summary>
    public bool NeedsWays => Plan is not null && Plan.Lesson.Fits.Value < LessonForecast.FitsWell;

    /// <summary>The address under which a way out is the plan.</summary>
    public string AddressOf(PlanWay way) => $"/practicals/{Practical.Id}{PlanQuery.Of(PlanQuery.Of(Form.Words, way.Settings))}";
}
