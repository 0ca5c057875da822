using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>
/// A plan as one HTML file that needs nothing else: no script, no request, its font inside. Whether the lesson fits comes
/// first, then what the class can conclude, how the lesson goes, what to put out, and what keeps it safe.
/// </summary>
public static class PlanReport
{
    /// <summary>Writes the report.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sentences">What is to be read first, a sentence each, without markup.</param>
    /// <param name="heading">Which class and date stand at its head; null for none.</param>
    /// <param name="stock">What is known of the school's stock: lengths and costs follow from it; null for nothing.</param>
    /// <returns>A whole HTML document; the same bytes for the same plan, sentences and heading.</returns>
    public static string Html(Plan plan, IReadOnlyList<string> sentences, ReportHeading? heading = null, PlanStock? stock = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        var page = new StringBuilder();
        ReportPage.Begin(page, plan.Settings.Practical.Title, heading?.ClassName ?? "plan", "plan");
        PlanHead.Write(page, plan, heading);
        ReportPage.Sentences(page, sentences);
        ConclusionSection.Write(page, plan);
        ChangeSection.Write(page, plan);
        ExpectedSection.Write(page, plan);
        LessonSection.Write(page, plan.Lesson);
        WaysSection.Write(page, plan);
        KitSection.Write(page, plan, stock ?? PlanStock.Unknown);
        CautionSection.Write(page, plan.Settings);
        WriteMethods(page, plan);
        ReportPage.End(page);
        return page.ToString();
    }

    private static void WriteMethods(StringBuilder page, Plan plan) => page.Append(
        CultureInfo.InvariantCulture,
        $"""
        <h2>How this was worked out</h2>
        <p>The practical was carried out {plan.Lesson.Lessons} times by a simulated class, with what usually goes wrong, each step
        taking a time between its least and its most, groups waiting for what they share and heating again while their own
        readings still change. A probability counted so may be off by about 1 in 100 through
        chance alone. How often things go wrong and how long steps take is mostly judgement: where your classes differ, change it.</p>

        """);
}
