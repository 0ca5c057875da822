using System.Globalization;
using System.IO.Compression;
using System.Text;
using Calx.Papers.Roster;
using Calx.Papers.Tables;
using Calx.Papers.Tests.Marks;
using Calx.Practicals.Marking;
using Calx.Practicals.Readings;

namespace Calx.Papers.Tests.Roster;

/// <summary>Tables for a school system. Columns, their order and the words for a status: 1EdTech, OneRoster 1.1, CSV tables (2017), the tables for
/// manifest, categories, lineItems and results.</summary>
public sealed class RosterResultsTests
{
    private static readonly RosterAbout About = new(
        "Larkmoor School", "9F", "magnesium-oxide 9F 2026-11-26", "Burning magnesium", new DateOnly(2026, 11, 26), new DateTimeOffset(2026, 11, 27, 0, 30, 0, TimeSpan.FromHours(1)));

    [Fact]
    public void The_files_have_the_columns_of_the_convention_in_its_order()
    {
        IReadOnlyList<RosterFile> files = RosterResults.Of(MarkedClasses.Of(6), About);
        Assert.Equal(["manifest.csv", "categories.csv", "lineItems.csv", "results.csv"], files.Select(f => f.Name));
        Assert.Equal("sourcedId,status,dateLastModified,title", Head(files[1]));
        Assert.Equal(
            "sourcedId,status,dateLastModified,title,description,assignDate,dueDate,classSourcedId,categorySourcedId,gradingPeriodSourcedId,resultValueMin,resultValueMax",
            Head(files[2]));
        // What is not in the convention stands behind what is, as metadata.
        Assert.Equal("sourcedId,status,dateLastModified,lineItemSourcedId,studentSourcedId,scoreStatus,score,scoreDate,comment,metadata.student", Head(files[3]));
        string[][] manifest = Rows(files[0]);
        Assert.Equal(["propertyName", "value"], manifest[0]);
        string[] properties =
        [
            "manifest.version", "oneroster.version", "file.academicSessions", "file.categories", "file.classes", "file.classResources", "file.courses", "file.courseResources",
            "file.demographics", "file.enrollments", "file.lineItems", "file.orgs", "file.resources", "file.results", "file.users", "source.systemName", "source.systemCode",
        ];
        Assert.Equal(properties, manifest.Skip(1).Select(r => r[0]));
        Assert.Equal(["file.categories", "file.lineItems", "file.results"], manifest.Where(r => r[1] == "delta").Select(r => r[0]));
        Assert.Equal(10, manifest.Count(r => r[1] == "absent"));
        Assert.Equal(("1.0", "1.1"), (manifest[1][1], manifest[2][1]));
        Assert.All(files, f => Assert.DoesNotContain("\n", f.Text.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal));
    }

    [Fact]
    public void Rows_refer_to_each_other_and_have_days_and_marks()
    {
        IReadOnlyList<RosterFile> files = RosterResults.Of(MarkedClasses.Of(36), About with { ClassSourcedId = "cls-9F", GradingPeriodSourcedId = "aut-26" });
        string[] category = Rows(files[1])[1], item = Rows(files[2])[1];
        string[][] results = Rows(files[3])[1..];
        Assert.Equal(["active", "2026-11-26T23:30:00.000Z", "Burning magnesium", "", "2026-11-26", "2026-11-26", "cls-9F", category[0], "aut-26", "0", "5"], item[1..]);
        Assert.Equal(36, results.Length);
        Assert.Equal(36, results.DistinctBy(r => r[0]).Count());
        Assert.Equal(36, results.DistinctBy(r => r[4]).Count());
        for (int i = 0; i < 36; i++)
        {
            (string[] answers, int marks) = MarkedClasses.Ways[i % 6];
            string status = answers.All(a => a.Length == 0) ? "not submitted" : answers.Any(a => a.Contains("essay", StringComparison.Ordinal)) ? "partially graded" : "fully graded";
            string name = MarkedClasses.NameOf(i);
            Assert.Equal(
                ["active", "2026-11-26T23:30:00.000Z", item[0], status, marks.ToString(CultureInfo.InvariantCulture), "2026-11-27", "=-@".Contains(name[0], StringComparison.Ordinal) ? $"'{name}" : name],
                results[i].Where((_, column) => column is 1 or 2 or 3 or 5 or 6 or 7 or 9));
            Assert.True(results[i][8].Length > 10);
        }
    }

    /// <summary>Hashes worked out with sha256sum of coreutils: <c>printf 'user\037Larkmoor School\037Ada' | sha256sum</c>.</summary>
    [Fact]
    public void Ids_are_hashes_of_the_names_as_given_and_stay_the_same()
    {
        string[][] table = [["student", "empty", "before", "after", "ratio"], ["Ada", "30.00", "30.24", "30.38", "1.13"]];
        string[] once = Rows(RosterResults.Of(MarkedClasses.Mark(table), About)[3])[1];
        Assert.Equal("4c0e9b8072f0cb20997a4af7feba6889a21be72840a40b2df624f8dc366231aa", once[4]);
        Assert.Equal("445b36d271d0f1221ec83a284109fdadb43da04c15d79a4b12041bfc787b3261", once[3]);
        Assert.Equal("a6d7ebd2c6791d743bcced20f16771c9b68387604d3c82f0bb33aae8da10c60a", once[0]);
        table[1][4] = "1.2";
        RosterAbout later = About with { Marked = About.Marked.AddDays(3), Title = "Burning magnesium again" };
        Assert.Equal([once[0], once[3], once[4]], Rows(RosterResults.Of(MarkedClasses.Mark(table), later)[3])[1].Where((_, column) => column is 0 or 3 or 4));
        Assert.NotEqual(once[0], Rows(RosterResults.Of(MarkedClasses.Mark(table), About with { Lesson = "another" })[3])[1][0]);
    }

    [Fact]
    public void What_the_schools_system_calls_a_student_stands_as_it_is()
    {
        string[][] results = Rows(RosterResults.Of(MarkedClasses.Of(4, ids: true), About)[3])[1..];
        Assert.Equal(["00000", "00002"], results.Where((_, i) => i % 2 == 0).Select(r => r[4]));
        Assert.All(results.Where((_, i) => i % 2 == 1), r => Assert.Matches("^[0-9a-f]{64}$", r[4]));
    }

    [Fact]
    public void Words_that_wait_are_partly_graded_and_a_teachers_mark_is_a_mark()
    {
        string name = MarkedClasses.NameOf(0), away = MarkedClasses.NameOf(5);
        string Status(int student, params Overruling[] own) => Rows(RosterResults.Of(MarkedClasses.Of(6, isWhole: true, ids: false, own), About)[3])[student + 1][5];
        Overruling[] all =
        [
            new(name, "what-happened", 2, ""), new(name, "conserved", 1, ""), new(name, "too-little", 1, ""), new(name, "better", 0, ""),
        ];
        Assert.Equal("partially graded", Status(0));
        Assert.Equal("partially graded", Status(0, all[..3]));
        Assert.Equal("fully graded", Status(0, all));
        Assert.Equal("not submitted", Status(5));
        Assert.Equal("fully graded", Status(5, new Overruling(away, "ratio", 1, "told me")));
    }

    [Fact]
    public void Without_students_there_is_no_file_of_results_and_a_line_break_becomes_a_blank()
    {
        IReadOnlyList<RosterFile> files = RosterResults.Of(MarkedClasses.Nobody(), About with { Title = "One,\r\n\"two\"" });
        Assert.Equal(["manifest.csv", "categories.csv", "lineItems.csv"], files.Select(f => f.Name));
        Assert.Contains("file.results,absent\r\n", files[0].Text, StringComparison.Ordinal);
        Assert.Contains(",\"One, \"\"two\"\"\",", files[2].Text, StringComparison.Ordinal);
        Assert.Equal("5", Rows(files[2])[1][11]);
    }

    [Fact]
    public void The_archive_holds_the_same_files_without_folders_in_UTF_8_and_no_clock()
    {
        MarkedClass marked = MarkedClasses.Of(8);
        byte[] zip = RosterResults.Zip(marked, About);
        Assert.Equal(zip, RosterResults.Zip(marked, About));
        using var archive = new ZipArchive(new MemoryStream(zip));
        foreach (RosterFile file in RosterResults.Of(marked, About))
        {
            using var reader = new StreamReader(archive.GetEntry(file.Name)!.Open(), new UTF8Encoding(false, throwOnInvalidBytes: true));
            Assert.Equal(file.Text, reader.ReadToEnd());
        }

        Assert.Equal(4, archive.Entries.Count);
        Assert.Contains("Jürgen Weiß", RosterResults.Of(marked, About)[3].Text, StringComparison.Ordinal);
    }

    private static string Head(RosterFile file) => file.Text[..file.Text.IndexOf('\r', StringComparison.Ordinal)];

    /// <summary>Read by the reader of teachers' files.</summary>
    private static string[][] Rows(RosterFile file)
    {
        TableFile.Opened opened = Assert.IsType<TableFile.Opened>(TableFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(file.Text))));
        CellTable table = opened.Sheets.Single();
        int columns = table.Rows[0].Cells.Max(c => c.Column);
        return [.. table.Rows.Select(r => Enumerable.Range(1, columns).Select(c => r.Cells.FirstOrDefault(cell => cell.Column == c)?.Text ?? "").ToArray())];
    }
}
