using Calx.App.Pages.Practicals;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Learning;

/// <summary>Accepts numbers that past lessons taught, and takes accepted ones back. Both are kept with initials and day.</summary>
public sealed class NumberDesk(RecordStore store, TimeProvider clock)
{
    /// <summary>Accepts numbers; returns why not, or null. All or none.</summary>
    /// <param name="learned">What was learned, now.</param>
    /// <param name="shown">Ids of the numbers, with the value that the teacher saw; null where it was not shown before.</param>
    /// <param name="initials">Who accepts.</param>
    /// <param name="by">Who enters it.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<string?> Accept(Learned learned, IReadOnlyDictionary<string, string?> shown, string initials, string by, CancellationToken cancellation)
    {
        if (Missing(shown.Count, initials, "Tick the numbers that you accept.") is string missing)
        {
            return missing;
        }

        if (learned.ClassName.Length > 0 && !learned.Classes.Any(c => ClassNames.Same(c, learned.ClassName)))
        {
            return $"There is no class '{learned.ClassName}' in these records.";
        }

        var decisions = new List<NumberDecision>();
        foreach ((string id, string? seen) in shown)
        {
            if (learned.Open.FirstOrDefault(c => c.Id == id) is not LearnedChange change)
            {
                return $"Nothing else than the file's value was learned of '{id}'.";
            }

            string after = NumberText.After(change);
            if (seen is not null && seen != after)
            {
                return $"What was learned of ‘{change.Label}’ has changed since this page was shown. Look at it again.";
            }

            decisions.Add(new NumberDecision(
                learned.Practical.Id, learned.Practical.Version, learned.ClassName, id, NumberText.Before(change), after,
                Short(change.RestsOn), Math.Min(change.Lessons, NumberDecision.MostLessons), initials, clock.GetUtcNow()));
        }

        return Fault(await store.Decide(decisions, by, cancellation));
    }

    /// <summary>Takes accepted numbers back, so that the file's stand again; returns why not, or null.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="className">The class whose numbers they are; empty for those of the school.</param>
    /// <param name="ids">Ids of the numbers.</param>
    /// <param name="initials">Who takes them back.</param>
    /// <param name="by">Who enters it.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<string?> TakeBack(Practical practical, string className, IReadOnlyCollection<string> ids, string initials, string by, CancellationToken cancellation)
    {
        if (Missing(ids.Count, initials, "Tick the numbers that you take back.") is string missing)
        {
            return missing;
        }

        NumberDecision[] standing = [.. AcceptedNumbers.Standing(await store.Decisions(practical.Id, cancellation), practical.Version).Where(d => !d.IsTakenBack)];
        var decisions = new List<NumberDecision>();
        foreach (string id in ids)
        {
            if (standing.FirstOrDefault(d => d.Number == id && ClassNames.Same(d.ClassName, className)) is not NumberDecision accepted)
            {
                return $"'{id}' is not an accepted number{(className.Length > 0 ? $" of {className}" : "")}.";
            }

            decisions.Add(new NumberDecision(
                practical.Id, practical.Version, accepted.ClassName, id, accepted.Was, "", accepted.RestsOn, accepted.Lessons, initials, clock.GetUtcNow()));
        }

        return Fault(await store.Decide(decisions, by, cancellation));
    }

    private static string? Missing(int count, string initials, string none) =>
        count == 0 ? none
        : initials.Trim().Length is 0 or > Signing.LongestInitials ? $"Initials of 1 to {Signing.LongestInitials} characters are expected: who accepts numbers is kept with them."
        : null;

    private static string? Fault(ChangeResult result) => (result as ChangeResult.Refused)?.Reason;

    private static string Short(string text) => text.Length <= NumberDecision.LongestText ? text : text[..NumberDecision.LongestText];
}
