using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>The lesson on one side for the teacher's desk: what is when, what to say when, the last calls, and what to do in an emergency.</summary>
public static class LessonStrip
{
    private const double TimelineWidth = 146;

    // In mm: what the calls and the emergencies leave of one side.
    private const double TimelineHeight = 105;

    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        LessonStripTexts texts = new(setting.Language);
        LessonForecast lesson = setting.Plan.Lesson;
        Chart timeline = TimelineChart.Typical(lesson, setting.Language);
        PaperBlock[] content =
        [
            .. setting.Plan.LessonSentences.Select(s => new PaperBlock.Paragraph(s)),
            new PaperBlock.Figure(timeline.Picture, timeline.Heading, Math.Min(TimelineWidth, Math.Floor(TimelineHeight * timeline.Picture.Width / timeline.Picture.Height))),
            new PaperBlock.Beside(
                [new PaperBlock.Heading(texts.CallsHeading, 2), new PaperBlock.Table(Calls(lesson, texts))], [Emergency(setting, texts)], leftShare: 0.58),
        ];
        return setting.Paper("lesson-strip", texts.Kind, texts.Title(setting.Practical.Title), content, setting.Look.Denser());
    }

    private static PaperTable Calls(LessonForecast lesson, LessonStripTexts texts)
    {
        PlanSettings plan = lesson.Settings;
        double gasOff = plan.Minutes - plan.Practical.Classroom.GasOffInMinutes;
        var calls = new List<(double Minute, string Say)>();
        calls.AddRange(lesson.Typical.Bars.Where(b => b.Kind == BarKind.Class).DistinctBy(b => b.StepId).Select(b => (b.FromMinute, Text.Capital(b.Label))));
        Add(lesson.Calls.NewTrial, texts.LastNewStart);
        Add(lesson.Calls.Heating, texts.LastHeating);
        if (plan.Practical.Classroom.GasOffInMinutes > 0 && gasOff > 0)
        {
            calls.Add((gasOff, texts.GasOff));
        }

        calls.Add((plan.Minutes, texts.Bell));
        return new PaperTable(
            [new(texts.MinuteColumn, 1, true), new(texts.ClockColumn, 1), new(texts.SayColumn, 6)],
            [.. calls.OrderBy(c => c.Minute).Select(c => (PaperCell[])[c.Minute.ToString("F0", CultureInfo.InvariantCulture), "", c.Say])]);

        void Add(double? minute, string say)
        {
            if (minute is > 0 and var at)
            {
                calls.Add((at, say));
            }
        }
    }

    private static PaperBlock.Panel Emergency(PaperSetting setting, LessonStripTexts texts)
    {
        SharedTexts shared = new(setting.Language);
        return new PaperBlock.Panel(
            PanelKind.Caution,
            texts.EmergencyHeading,
            [
                new PaperBlock.Items(
                    ListKind.Bullets,
                    [.. setting.Practical.Emergencies.Select(e => Phrase.Bold($"{shared.Lead(Text.Capital(e.When))} ").Then(shared.Sentence(e.Act)))]),
                new PaperBlock.Paragraph(texts.ToFillIn, ParagraphLook.Small),
                new PaperBlock.Paragraph(texts.LocalRules, ParagraphLook.Small),
            ]);
    }
}
