using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>The lesson on one side for the teacher's desk: what is when, what to say when, the last calls, and what to do in an emergency.</summary>
public static class LessonStrip
{
    private const double TimelineWidth = 146;

    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        LessonForecast lesson = setting.Plan.Lesson;
        Chart timeline = TimelineChart.Typical(lesson);
        PaperBlock[] content =
        [
            .. setting.Plan.LessonSentences.Select(s => new PaperBlock.Paragraph(s)),
            new PaperBlock.Figure(timeline.Picture, timeline.Heading, TimelineWidth),
            new PaperBlock.Beside(
                [new PaperBlock.Heading("When to say what", 2), new PaperBlock.Table(Calls(lesson))], [Emergency(setting.Practical)], leftShare: 0.58),
        ];
        return setting.Paper("lesson-strip", "Lesson", $"The lesson: {setting.Practical.Title}", content, setting.Look.Denser());
    }

    private static PaperTable Calls(LessonForecast lesson)
    {
        PlanSettings plan = lesson.Settings;
        double gasOff = plan.Minutes - plan.Practical.Classroom.GasOffInMinutes;
        var calls = new List<(double Minute, string Say)>();
        calls.AddRange(lesson.Typical.Bars.Where(b => b.Kind == BarKind.Class).DistinctBy(b => b.StepId).Select(b => (b.FromMinute, Text.Capital(b.Label))));
        Add(lesson.Calls.NewTrial, "Last new start: whoever loses a sample after this joins another group or goes on with simulated readings.");
        Add(lesson.Calls.Heating, "Last heating starts now at the latest.");
        if (plan.Practical.Classroom.GasOffInMinutes > 0 && gasOff > 0)
        {
            calls.Add((gasOff, "Gas off, all flames out. Hot things stay where they are."));
        }

        calls.Add((plan.Minutes, "The bell."));
        return new PaperTable(
            [new("Minute", 1, true), new("Clock", 1), new("What to say", 6)],
            [.. calls.OrderBy(c => c.Minute).Select(c => (PaperCell[])[c.Minute.ToString("F0", CultureInfo.InvariantCulture), "", c.Say])]);

        void Add(double? minute, string say)
        {
            if (minute is > 0 and var at)
            {
                calls.Add((at, say));
            }
        }
    }

    private static PaperBlock.Panel Emergency(Practical practical) => new(
        PanelKind.Caution,
        "In an emergency",
        [
            new PaperBlock.Items(ListKind.Bullets, [.. practical.Emergencies.Select(e => Phrase.Bold($"{Text.Capital(e.When)}: ").Then($"{e.Act}."))]),
            new PaperBlock.Paragraph("First aider ____________  Gas tap ____________", ParagraphLook.Small),
            new PaperBlock.Paragraph("Local rules come first.", ParagraphLook.Small),
        ]);
}
