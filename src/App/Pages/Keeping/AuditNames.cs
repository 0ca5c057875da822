using Calx.App.Pages.Lessons;
using Calx.App.Pages.Practicals;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Pages.Keeping;

/// <summary>What the audit's lines are of, in the names that people know: a class by its name, a lesson by practical, class and day.</summary>
public sealed class AuditNames
{
    private readonly Dictionary<string, string> names = new(StringComparer.Ordinal);
    private readonly Shelf shelf;

    private AuditNames(Shelf shelf) => this.shelf = shelf;

    /// <summary>The names of what is in the records now.</summary>
    public static async Task<AuditNames> Now(RecordStore store, LessonList lessons, Shelf shelf, CancellationToken cancellation)
    {
        var now = new AuditNames(shelf);
        foreach (SchoolClass one in await store.Classes(cancellation))
        {
            now.names[$"class {one.Id}"] = $"class {one.Name}, {one.Year}";
        }

        foreach (LessonRow row in await lessons.All(cancellation))
        {
            now.names[$"lesson {row.Lesson.Id}"] = $"lesson of {row.Class.Name}, {Dates.Day(row.Lesson.Date)}: {row.Title}";
        }

        foreach (KeptBalance balance in await store.Balances(cancellation))
        {
            now.names[$"balance {balance.Id}"] = $"balance {balance.Letter}";
        }

        return now;
    }

    /// <summary>The subject of a line; what is in the records no longer keeps the id under which it was.</summary>
    public string Of(string subject)
    {
        if (names.TryGetValue(subject, out string? known))
        {
            return known;
        }

        string[] words = subject.Split(' ', 2);
        return (words[0], words.Length > 1 ? words[1] : "") switch
        {
            ("practical", string id) => shelf.Find(id)?.Title ?? subject,
            ("member", string id) when id.Split('/') is [string one, string number] && names.TryGetValue($"class {one}", out string? of) =>
                $"number {number} of {of}",
            ("web-key", _) => "the key to the program's own cookies",
            _ => subject,
        };
    }
}
