using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
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
    /// <param name="heading">Which class and date stand at its head, and in which language it is; null for none, in British English.</param>
    /// <param name="stock">What is known of the school's stock: lengths and costs follow from it; null for nothing.</param>
    /// <param name="draft">Whether the practical still waits for its safety check, which its head then says.</param>
    /// <returns>A whole HTML document; the same bytes for the same arguments.</returns>
    public static string Html(Plan plan, IReadOnlyList<string> sentences, ReportHeading? heading = null, PlanStock? stock = null, bool draft = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        PaperLanguage language = (heading?.Language ?? PaperLanguage.BritishEnglish).For(plan.Settings.Practical);
        var page = new StringBuilder();
        ReportPage.Begin(page, plan.Settings.Practical.Title, heading?.ClassName ?? new PlanTexts(language).ForWhom, language, "plan");
        PlanHead.Write(page, plan, heading, draft, language);
        WriteSections(page, plan, sentences, stock, language);
        ReportPage.End(page);
        return page.ToString();
    }

    /// <summary>What stands under the plan's head, as parts of another page: it has a title of its own, so the headings here
    /// begin with h2. No element carries a style; the page brings <see cref="ReportStyle.ScreenSheet"/> and puts this into an
    /// element of class <c>report plan</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sentences">What is to be read first, a sentence each, without markup.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    /// <param name="language">The language of its own texts; null for British English.</param>
    /// <returns>HTML, safe to place whatever the practical's file says.</returns>
    public static string Sections(Plan plan, IReadOnlyList<string> sentences, PlanStock? stock = null, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        var page = new StringBuilder();
        WriteSections(page, plan, sentences, stock, (language ?? PaperLanguage.BritishEnglish).For(plan.Settings.Practical));
        return page.ToString();
    }

    /// <summary>The first part of <see cref="Sections"/>: whether it fits and shows enough, and the minutes to remember.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language of its own texts; null for British English.</param>
    public static string Verdicts(Plan plan, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var page = new StringBuilder();
        PlanVerdicts.Write(page, plan, new PlanTexts((language ?? PaperLanguage.BritishEnglish).For(plan.Settings.Practical)));
        return page.ToString();
    }

    /// <summary>The rest of <see cref="Sections"/>, for a page that puts something of its own between.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sentences">What is to be read first, a sentence each, without markup.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    /// <param name="language">The language of its own texts; null for British English.</param>
    public static string UnderVerdicts(Plan plan, IReadOnlyList<string> sentences, PlanStock? stock = null, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sentences);
        var page = new StringBuilder();
        WriteUnderVerdicts(page, plan, sentences, stock, (language ?? PaperLanguage.BritishEnglish).For(plan.Settings.Practical));
        return page.ToString();
    }

    private static void WriteSections(StringBuilder page, Plan plan, IReadOnlyList<string> sentences, PlanStock? stock, PaperLanguage language)
    {
        PlanVerdicts.Write(page, plan, new PlanTexts(language));
        WriteUnderVerdicts(page, plan, sentences, stock, language);
    }

    private static void WriteUnderVerdicts(StringBuilder page, Plan plan, IReadOnlyList<string> sentences, PlanStock? stock, PaperLanguage language)
    {
        PlanTexts texts = new(language);
        ReportPage.Sentences(page, sentences);
        ConclusionSection.Write(page, plan, language);
        ChangeSection.Write(page, plan, texts);
        ExpectedSection.Write(page, plan, texts);
        LessonSection.Write(page, plan.Lesson, language);
        WaysSection.Write(page, plan, texts);
        KitSection.Write(page, plan, stock ?? PlanStock.Unknown, texts);
        CautionSection.Write(page, plan.Settings, language);
        WriteMethods(page, plan, texts);
    }

    private static void WriteMethods(StringBuilder page, Plan plan, PlanTexts texts) => page
        .Append(CultureInfo.InvariantCulture, $"<h2>{Text.Own(texts.MethodsHeading)}</h2>\n")
        .Append(CultureInfo.InvariantCulture, $"<p>{Text.Own(Methods(plan, texts))}</p>\n");

    /// <summary>Where a practical goes on to constant mass, its groups repeat as their readings ask for.</summary>
    private static string Methods(Plan plan, PlanTexts texts)
    {
        string lessons = plan.Lesson.Lessons.ToString(CultureInfo.InvariantCulture);
        return plan.Settings.Practical.Findings.ConstantMass is null ? texts.MethodsOnce(lessons) : texts.Methods(lessons);
    }
}
