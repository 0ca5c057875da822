using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
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
    /// <param name="draft">Whether the practical still waits for its safety check, which its head then says.</param>
    /// <returns>A whole HTML document; the same bytes for the same arguments.</returns>
    public static string Html(Plan plan, IReadOnlyList<string> sentences, ReportHeading? heading = null, PlanStock? stock = null, bool draft = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        var page = new StringBuilder();
        ReportPage.Begin(page, plan.Settings.Practical.Title, heading?.ClassName ?? "plan", "plan");
        PlanHead.Write(page, plan, heading, draft);
        WriteSections(page, plan, sentences, stock);
        ReportPage.End(page);
        return page.ToString();
    }

    /// <summary>What stands under the plan's head, as parts of another page: it has a title of its own, so the headings here
    /// begin with h2. No element carries a style; the page brings <see cref="ReportStyle.ScreenSheet"/> and puts this into an
    /// element of class <c>report plan</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sentences">What is to be read first, a sentence each, without markup.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    /// <returns>HTML, safe to place whatever the practical's file says.</returns>
    public static string Sections(Plan plan, IReadOnlyList<string> sentences, PlanStock? stock = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        var page = new StringBuilder();
        WriteSections(page, plan, sentences, stock);
        return page.ToString();
    }

    /// <summary>The first part of <see cref="Sections"/>: whether it fits and shows enough, and the minutes to remember.</summary>
    /// <param name="plan">The plan.</param>
    public static string Verdicts(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var page = new StringBuilder();
        PlanVerdicts.Write(page, plan);
        return page.ToString();
    }

    /// <summary>The rest of <see cref="Sections"/>, for a page that puts something of its own between.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sentences">What is to be read first, a sentence each, without markup.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    public static string UnderVerdicts(Plan plan, IReadOnlyList<string> sentences, PlanStock? stock = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        var page = new StringBuilder();
        WriteUnderVerdicts(page, plan, sentences, stock);
        return page.ToString();
    }

    private static void WriteSections(StringBuilder page, Plan plan, IReadOnlyList<string> sentences, PlanStock? stock)
    {
        PlanVerdicts.Write(page, plan);
        WriteUnderVerdicts(page, plan, sentences, stock);
    }

    private static void WriteUnderVerdicts(StringBuilder page, Plan plan, IReadOnlyList<string> sentences, PlanStock? stock)
    {
        ReportPage.Sentences(page, sentences);
        ConclusionSection.Write(page, plan);
        ChangeSection.Write(page, plan);
        ExpectedSection.Write(page, plan);
        LessonSection.Write(page, plan.Lesson);
        WaysSection.Write(page, plan);
        KitSection.Write(page, plan, stock ?? PlanStock.Unknown);
        CautionSection.Write(page, plan.Settings);
        WriteMethods(page, plan);
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
