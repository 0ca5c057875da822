using System.Globalization;
using Calx.App.Live;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;

namespace Calx.App.Pages.Marking;

/// <summary>One student's answer in words, to be marked by the teacher.</summary>
/// <param name="Work">Whose.</param>
/// <param name="Prose">The answer.</param>
public sealed record WordItem(LessonWork Work, ProseMark Prose)
{
    /// <summary>Where it stands, for addresses.</summary>
    public string Key => string.Create(CultureInfo.InvariantCulture, $"{Prose.Question.Id}:{Work.Member.Number}");

    /// <summary>What the teacher decided, or null.</summary>
    public MarkDecision? Decision => Work.DecisionOn(Prose.Question.Id);

    /// <summary>Whether it was marked and is another answer now.</summary>
    public bool HasChanged => Decision is { Overruling: not null, HasChanged: true };

    /// <summary>Whether the teacher is wanted: it has no marks yet, or was changed since.</summary>
    public bool IsWaiting => Prose.Text.Length > 0 && (Prose.Marks is null || HasChanged);
}
