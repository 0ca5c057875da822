using Calx.Practicals.Texts;

namespace Calx.Practicals.Clock;

/// <summary>What keeps a lesson longest.</summary>
public sealed class Bottleneck
{
    /// <summary>A shared thing is the bottleneck once a group waits so many minutes for it in a lesson (judgement).</summary>
    private const double WaitThatCounts = 4;

    private Bottleneck(string id, string sentence)
    {
        Id = id;
        Sentence = sentence;
    }

    /// <summary><c>balance</c>, <c>teacher</c>, the id of a piece of kit, or of a step.</summary>
    public string Id { get; }

    /// <summary>The same for the teacher.</summary>
    public string Sentence { get; }

    internal static Bottleneck Of(LessonForecast forecast)
    {
        var texts = new LessonTexts(forecast.Settings.Language);
        ThingUse? longest = forecast.Uses.MaxBy(u => u.MeanWait);
        if (longest is not null && longest.MeanWait >= WaitThatCounts)
        {
            return new Bottleneck(longest.Thing.Id, texts.GroupWaits(
                longest.MeanWait.InFigures("F0"), longest.Thing.Label, longest.LongestWait.InFigures("F0")));
        }

        var step = forecast.Typical.CriticalPath.GroupBy(s => (s.StepId, s.Label))
            .Select(g => (g.Key.StepId, g.Key.Label, Minutes: g.Sum(s => s.ToMinute - s.FromMinute)))
            .MaxBy(g => g.Minutes);
        return new Bottleneck(step.StepId, texts.NoQueue(step.Label, step.Minutes.InFigures("F0")));
    }
}
