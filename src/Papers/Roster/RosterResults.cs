using System.Globalization;
using System.IO.Compression;
using System.Text;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;

namespace Calx.Papers.Roster;

/// <summary>
/// The totals of a class as the OneRoster convention lays them out for school systems (1EdTech, OneRoster 1.1, CSV binding):
/// <c>manifest.csv</c>, <c>categories.csv</c>, <c>lineItems.csv</c>, <c>results.csv</c>. They are sent as changes ('delta'): a whole data set ('bulk') would
/// have to hold the school's classes, terms and students too.
/// </summary>
public static class RosterResults
{
    private const string Delta = "delta", Absent = "absent", Active = "active";

    private static readonly string[] Manifest =
    [
        "academicSessions", "categories", "classes", "classResources", "courses", "courseResources", "demographics", "enrollments", "lineItems", "orgs", "resources",
        "results", "users",
    ];

    /// <summary>Writes them.</summary>
    /// <param name="marked">The class, marked. Without students there are no results: only the item that they would belong to.</param>
    /// <param name="about">School, class, lesson and days.</param>
    /// <returns>The files, the manifest first; the same texts for the same class.</returns>
    public static IReadOnlyList<RosterFile> Of(MarkedClass marked, RosterAbout about)
    {
        ArgumentNullException.ThrowIfNull(marked);
        ArgumentNullException.ThrowIfNull(about);
        var ids = new RosterIds(about);
        string modified = about.Marked.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
        RosterFile[] data =
        [
            RosterFile.Of(
                "categories.csv",
                ["sourcedId", "status", "dateLastModified", "title"],
                [ids.Category, Active, modified, new MarksTexts(about.Language).RosterCategory]),
            RosterFile.Of(
                "lineItems.csv",
                [
                    "sourcedId", "status", "dateLastModified", "title", "description", "assignDate", "dueDate", "classSourcedId", "categorySourcedId", "gradingPeriodSourcedId",
                    "resultValueMin", "resultValueMax",
                ],
                [
                    ids.LineItem, Active, modified, about.Title, "", Day(about.Held), Day(about.Held), ids.Class, ids.Category, ids.GradingPeriod, "0", Number(Most(marked)),
                ]),
            // A file without rows is not allowed.
            .. marked.Works.Count == 0 ? [] : (RosterFile[])[RosterFile.Of(
                "results.csv",
                [
                    ["sourcedId", "status", "dateLastModified", "lineItemSourcedId", "studentSourcedId", "scoreStatus", "score", "scoreDate", "comment", "metadata.student"],
                    .. marked.Works.Select(w => (string[])
                    [
                        ids.Result(w.Work), Active, modified, ids.LineItem, ids.Student(w.Work), RosterStatus.Of(w), Number(w.Total),
                        Day(DateOnly.FromDateTime(about.Marked.DateTime)), w.Feedback, Name(w.Work.Student),
                    ]),
                ])],
        ];
        return [RosterFile.Of("manifest.csv", ManifestRows([.. data.Select(d => Path.GetFileNameWithoutExtension(d.Name))])), .. data];
    }

    /// <summary>The same as one ZIP file, without folders in it, as the convention has it.</summary>
    /// <returns>Its bytes; the same for the same class.</returns>
    public static byte[] Zip(MarkedClass marked, RosterAbout about)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (RosterFile file in Of(marked, about))
            {
                using Stream entry = archive.CreateEntry(file.Name).Open();
                entry.Write(Encoding.UTF8.GetBytes(file.Text));
            }
        }

        return FixedZip.Of(bytes.ToArray());
    }

    private static IEnumerable<string[]> ManifestRows(string[] sent) =>
    [
        ["propertyName", "value"], ["manifest.version", "1.0"], ["oneroster.version", "1.1"],
        .. Manifest.Select(name => (string[])[$"file.{name}", sent.Contains(name) ? Delta : Absent]),
        ["source.systemName", "Calx"], ["source.systemCode", "calx"],
    ];

    /// <summary>Marks to be earned: the same for all of a class.</summary>
    private static int Most(MarkedClass marked) => marked.Works.Select(w => w.Of).Append(marked.Works.Count == 0 ? marked.Questions.Sum(q => q.Answer.Marks) : 0).Max();

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A name that a spreadsheet would take for a formula stays a text. Ids are left as they are: a system compares them.</summary>
    private static string Name(string student) => "=+-@\t\r".Contains(student[0], StringComparison.Ordinal) ? $"'{student}" : student;
}
