using Calx.Practicals.Learning;

namespace Calx.App.Learning;

/// <summary>Works out what past lessons teach, and keeps the last answers: going from a class to another and back, or accepting what was
/// shown, costs nothing.</summary>
internal sealed class LearnedAnswers
{
    private const int Most = 20;

    private readonly Lock gate = new();
    private readonly List<(LearnedQuestion Question, LearnedPriors Priors)> kept = [];

    /// <summary>The answer.</summary>
    public async Task<LearnedPriors> Of(LearnedQuestion question, CancellationToken cancellation)
    {
        lock (gate)
        {
            if (kept.FirstOrDefault(k => k.Question.IsSame(question)).Priors is LearnedPriors known)
            {
                return known;
            }
        }

        LearnedPriors priors = await Task.Run(() => Work(question), cancellation);
        lock (gate)
        {
            kept.Add((question, priors));
            kept.RemoveRange(0, Math.Max(0, kept.Count - Most));
        }

        return priors;
    }

    private static LearnedPriors Work(LearnedQuestion question) => LearnedPriors.Of(
        question.Practical,
        question.Lessons,
        [.. question.Checks.Select(c => new BalanceCheckSeen(c.Balance, c.Month, c.Error, c.Uncertainty))],
        new NextLesson("", question.ClassKey, question.Groups));
}
