using Calx.App.Learning;
using Calx.Practicals.Learning;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Learning;

/// <summary>What past lessons teach of a practical, and what of it was accepted.</summary>
/// <param name="Learned">What they teach.</param>
/// <param name="Decisions">All decisions on the practical's numbers, the latest first.</param>
/// <param name="Next">The lesson for which it was asked, or null.</param>
/// <param name="Said">What was done or is wrong.</param>
public sealed record LearnedModel(Learned Learned, IReadOnlyList<NumberDecision> Decisions, Lesson? Next, Lessons.PageSaid Said)
{
    /// <summary>The page's own address.</summary>
    public string Address => $"/practicals/{Learned.Practical.Id}/learned";

    /// <summary>What holds of this version now, by class and number.</summary>
    public IReadOnlyList<NumberDecision> Accepted =>
    [
        .. AcceptedNumbers.Standing(Decisions, Learned.Practical.Version).Where(d => !d.IsTakenBack)
            .OrderBy(d => d.ClassName, StringComparer.OrdinalIgnoreCase).ThenBy(d => d.Number, StringComparer.Ordinal),
    ];

    /// <summary>The accepted value of a number for the class that is shown, or null.</summary>
    public NumberDecision? AcceptedOf(LearnedChange change) => Accepted
        .Where(d => d.Number == change.Id && (d.ClassName.Length == 0 || ClassNames.Same(d.ClassName, Learned.ClassName))).MaxBy(d => d.ClassName.Length > 0);

    /// <summary>Differences that chance hardly explains.</summary>
    public IEnumerable<LearnedChange> Telling => Learned.Open.Where(c => c.Sentence is not null);

    /// <summary>All others that may be accepted.</summary>
    public IEnumerable<LearnedChange> Others => Learned.Open.Where(c => c.Sentence is null);

    /// <summary>What is told and leaves no number to accept: a vessel that cools no faster, a balance that drifts.</summary>
    public IEnumerable<string> Told => Learned.Priors.Sentences.Except(Telling.Select(c => c.Sentence!));

    /// <summary>What a number is called.</summary>
    public string LabelOf(string number) => Learned.Practical switch
    {
        var p when Of(number, NumberText.Time) is string step => p.Steps.FirstOrDefault(s => s.Id == step)?.Label ?? step,
        var p when Of(number, NumberText.Fault) is string cause => p.Faults.FirstOrDefault(f => f.Cause == cause)?.Label ?? cause,
        var p when Of(number, NumberText.Kit) is string piece => $"{p.Kit.FirstOrDefault(k => k.Id == piece)?.Label ?? piece}: breaks",
        _ => number,
    };

    private static string? Of(string number, string kind) => number.StartsWith(kind, StringComparison.Ordinal) ? number[kind.Length..] : null;
}
