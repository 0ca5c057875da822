using System.Globalization;
using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Marking.Judging;

namespace Calx.App.Pages.Answers;

/// <summary>The questions of a lesson in the order in which they are asked: values and judgements, then those in words.</summary>
public static class AnswerQuestions
{
    /// <summary>Those that the teacher asks and that the lesson's plan gives readings for.</summary>
    public static IReadOnlyList<AnswerQuestion> Of(LessonView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        MarkingSettings settings = MarkingSettings.Of(view);
        Practical practical = view.Practical;
        var reach = new AnswerReach(practical, view.Weighings.Select(w => w.Reading.Id).Distinct());
        return
        [
            .. practical.AllAnswers.Where(a => settings.Asks(a.Id) && IsGiven(a, reach)).Select(a => a switch
            {
                AnswerDefinition value => Value(value, settings),
                JudgementAnswer judgement => Judgement(judgement, view),
                _ => throw new System.Diagnostics.UnreachableException(),
            }),
            .. view.Room.Plan.Questions.Where(q => settings.Asks(q.Id) && !q.Needs.Any(view.Room.Plan.Unread.Contains))
                .Select(q => new AnswerQuestion(q.Id, AnswerKind.Words, "", q.Ask, "", [])),
        ];
    }

    /// <summary>Whether the readings of the plan lead to it.</summary>
    private static bool IsGiven(AskedAnswer answer, AnswerReach reach) => answer switch
    {
        AnswerDefinition value => reach.Gives(value),
        JudgementAnswer.OfFormula formula => reach.Gives(formula.Ratio),
        JudgementAnswer.OfCause cause => reach.Gives(cause.Value),
        JudgementAnswer.OfImprovement improvement => reach.Gives(improvement.Cause.Value),
        _ => true,
    };

    private static AnswerQuestion Judgement(JudgementAnswer answer, LessonView view) => new(
        answer.Id,
        answer is JudgementAnswer.OfFormula ? AnswerKind.Formula : AnswerKind.Choice,
        answer.Label,
        answer.Ask,
        "",
        answer is JudgementAnswer.OfOddGroup ? OfGroups(view)
            : [.. JudgementChoices.Of(view.Practical, answer).Select(c => new AnswerChoice(c.Id, c.Label))]);

    private static AnswerChoice[] OfGroups(LessonView view) =>
    [
        .. view.Groups.Select(g => g.ToString(CultureInfo.InvariantCulture)).Select(g => new AnswerChoice(g, $"group {g}")),
        new(JudgementChoices.None, "none of them"),
        new(JudgementChoices.CannotTell, "too few groups to tell"),
    ];

    private static AnswerQuestion Value(AnswerDefinition answer, MarkingSettings settings) => new(
        answer.Id, AnswerKind.Value, answer.Label, "", settings.Units == UnitsRule.Asked || answer.Unit == "1" ? "" : answer.Unit, []);
}
