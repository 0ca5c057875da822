using System.Text.Json;
using System.Text.RegularExpressions;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx catch-up</c>.</summary>
public sealed partial class CatchUpCommandTests : IDisposable
{
    private static readonly string[] Usual = ["catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "2026", "--out", "out"];

    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    [Fact]
    public void A_sheet_a_student_one_key_and_the_truth_are_written_with_names_for_every_system()
    {
        Students("Amir K", "Beth O’Neil", "=1+1", "CON", "A/..\\B", "Chloë");
        Terminal run = Run([.. Usual, "--class", "9F"]);

        Assert.Equal((0, ""), (run.ExitCode, run.Output));
        string[] names = [.. Directory.GetFiles(In("out")).Select(f => Path.GetFileName(f)!)];
        Assert.Equal(15, names.Length);
        Assert.Superset(
            new HashSet<string>(["catch-up-amir-k.docx", "catch-up-amir-k.html", "catch-up-con.html", "catch-up-key.docx", "catch-up-key.html", "catch-up-truth.json"]), names.ToHashSet());
        Assert.All(names, n => Assert.Matches("^catch-up-[a-z0-9-]+\\.(docx|html|json)$", n));
        string odd = Assert.Single(names, n => n.StartsWith("catch-up-1-1", StringComparison.Ordinal) && n.EndsWith("html", StringComparison.Ordinal));
        Assert.Contains("<strong>=1+1</strong>", File.ReadAllText(In($"out/{odd}")), StringComparison.Ordinal);
        JsonElement truth = Schemas.Check("catch-up", File.ReadAllText(In("out/catch-up-truth.json")));
        Assert.Equal(6, truth.GetProperty("packs").GetArrayLength());
        Assert.Equal("9F", truth.GetProperty("class").GetString());
    }

    [Fact]
    public void The_readings_of_the_truth_stand_on_the_sheet_and_on_the_key()
    {
        Students("Amir K", "Beth");
        Assert.Equal(0, Run([.. Usual, "--format", "html"]).ExitCode);
        string key = File.ReadAllText(In("out/catch-up-key.html"));
        foreach (JsonElement pack in Truth("out/catch-up-truth.json").GetProperty("packs").EnumerateArray())
        {
            string sheet = File.ReadAllText(In($"out/{pack.GetProperty("file").GetString()}.html"));
            string[] shown = [.. pack.GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("shown").GetString()!)];
            Assert.All(shown, s => Assert.Matches(@"^\d+\.\d\d$", s));
            Assert.All(shown, s => Assert.Contains($"<strong>{s}</strong>", sheet, StringComparison.Ordinal));
            Assert.Contains(string.Join("; ", shown), key, StringComparison.Ordinal);
            // What is true is the teacher's.
            Assert.All(pack.GetProperty("planted").EnumerateArray(), p => Assert.DoesNotContain(p.GetProperty("label").GetString()!, sheet, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_student_more_or_another_order_leaves_the_files_of_the_others_as_they_were_byte_for_byte()
    {
        Students("Amir K", "Beth O’Neil");
        Assert.Equal(0, Run([.. Usual]).ExitCode);
        Students("Zoe", "beth  o’neil", "Amir K", "Dilip");
        Assert.Equal(0, Run("catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "2026", "--out", "more").ExitCode);

        Assert.Equal(File.ReadAllBytes(In("out/catch-up-amir-k.html")), File.ReadAllBytes(In("more/catch-up-amir-k.html")));
        Assert.Equal(File.ReadAllBytes(In("out/catch-up-amir-k.docx")), File.ReadAllBytes(In("more/catch-up-amir-k.docx")));
        // The name is printed as it is typed; the data are the same.
        Assert.Equal(Shown("out", "Beth O’Neil"), Shown("more", "beth  o’neil"));
    }

    [Fact]
    public void A_table_with_a_heading_gives_its_column_of_names()
    {
        File.WriteAllText(In("away.csv"), "Class;Student;Group\n9F;Amir K;1\n9F;\"Smith, Anna\";2\n");
        Assert.Equal(0, Run("catch-up", "magnesium-oxide", "--students", "away.csv", "--seed", "1", "--out", "out", "--format", "html").ExitCode);
        Assert.Equal(["Amir K", "Smith, Anna"], Truth("out/catch-up-truth.json").GetProperty("packs").EnumerateArray().Select(p => p.GetProperty("student").GetString()));
    }

    [Fact]
    public void Every_fault_of_the_list_is_told_with_its_place_and_nothing_is_written()
    {
        File.WriteAllText(In("away.txt"), $"Amir K\n\n  amir k\n{new string('x', 81)}\nBeth\na,b,c\n");
        Terminal run = Run(Usual);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Equal(
            [
                "away.txt:2:1: this line is empty and passed over; expected a name",
                "away.txt:3:1: 'amir k' stands on line 1 already; expected each student once, two of one name told apart, as by a letter of the surname",
                "away.txt:4:1: this name has 81 characters; expected 80 at most",
                "away.txt:6:3: there are 3 cells in this row; expected one name a line, or a table with the heading 'name' above the names",
            ],
            run.Error.TrimEnd('\n').Split('\n'));
        Assert.False(Directory.Exists(In("out")));
    }

    [Theory]
    [InlineData("name\n", "away.txt:1:1: there is no name in it; expected one name a line, or a table with the heading 'name' above the names")]
    [InlineData("", "away.txt:1:1: the file is empty; expected one name a line, or a table with the heading 'name' above the names")]
    [InlineData("name,group\nAmir,1\n,2\n", "away.txt:3:1: there is no name in this row; expected one, or the row left out")]
    [InlineData("name,student\nAmir,B\n", "away.txt:1:2: two columns could hold the names; expected one of the headings 'name', 'student', 'pupil', 'student name', 'pupil name', once")]
    public void A_list_without_names_says_what_was_expected(string list, string expected)
    {
        File.WriteAllText(In("away.txt"), list);
        Terminal run = Run(Usual);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void More_names_than_a_year_group_has_are_one_fault()
    {
        Students([.. Enumerable.Range(1, 402).Select(i => $"Student {i}")]);
        Terminal run = Run(Usual);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("away.txt:401:1: there are more than 400 names", run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(c => c == '\n'));
    }

    [Theory]
    [InlineData("calx catch-up: which practical?", "catch-up", "--students", "away.txt", "--seed", "1", "--out", "out")]
    [InlineData("calx catch-up: which students? Name a file of them with --students.", "catch-up", "magnesium-oxide", "--seed", "1", "--out", "out")]
    [InlineData("calx catch-up: which seed?", "catch-up", "magnesium-oxide", "--students", "away.txt", "--out", "out")]
    [InlineData("calx catch-up: into which folder? Name it with --out.", "catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "1")]
    [InlineData("calx catch-up: --level: 'hard' is not known; expected guided, standard, open", "catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "1", "--out", "out", "--level", "hard")]
    [InlineData("calx catch-up: --format: 'rtf' is not known; expected docx, html, pdf", "catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "1", "--out", "out", "--format", "rtf")]
    [InlineData("away.txt:1:1: there is no such file", "catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "1", "--out", "out")]
    [InlineData("--odd", "catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "1", "--out", "out", "--odd", "1.5")]
    public void What_is_missing_or_not_known_is_said(string expected, params string[] words)
    {
        Terminal run = Run(words);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(In("out")));
    }

    [Fact]
    public void A_file_that_is_there_is_left_as_it_is_and_nothing_else_is_written()
    {
        Students("Amir K");
        Directory.CreateDirectory(In("out"));
        File.WriteAllText(In("out/catch-up-amir-k.html"), "mine");
        Terminal run = Run(Usual);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("catch-up-amir-k.html:1:1: there is such a file already", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Assert.Single(Directory.GetFiles(In("out")))));

        File.WriteAllText(In("truth.json"), "mine");
        Terminal again = Run("catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "2026", "--out", "other", "--truth", "truth.json");
        Assert.Equal((2, "mine"), (again.ExitCode, File.ReadAllText(In("truth.json"))));
        Assert.False(Directory.Exists(In("other")));
    }

    [Fact]
    public void The_truth_goes_where_it_is_wanted_and_to_a_program()
    {
        Students("Amir K");
        Terminal run = Run([.. Usual, "--truth", "kept.json", "--json", "--odd", "1", "--resolution", "0.001", "--format", "html"]);
        Assert.Equal(0, run.ExitCode);
        Assert.False(File.Exists(In("out/catch-up-truth.json")));
        Assert.Equal(File.ReadAllText(In("kept.json")), run.Output);
        JsonElement pack = Schemas.Check("catch-up", run.Output).GetProperty("packs")[0];
        Assert.True(pack.GetProperty("odd").GetBoolean());
        Assert.All(pack.GetProperty("readings").EnumerateArray(), r => Assert.Matches(@"^\d+\.\d\d\d$", r.GetProperty("shown").GetString()));
    }

    [Fact]
    public void What_the_plan_leaves_out_is_told_and_more_than_a_class_may_use_gives_no_packs()
    {
        Students("Amir K");
        Terminal without = Run([.. Usual, "--no-empty", "--format", "html"]);
        Assert.Equal(1, without.ExitCode);
        Assert.Contains("'Mass of magnesium' is asked for, but the table has no row for 'Mass of empty crucible and lid'.", without.Error, StringComparison.Ordinal);
        Terminal more = Run("catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "1", "--out", "more", "--mass", "0.5");
        Assert.Equal(1, more.ExitCode);
        Assert.False(Directory.Exists(In("more")));
    }

    /// <summary>Common practice in schools: a sheet has a front and a back; two sheets for a pack.</summary>
    [Fact]
    public void A_pack_is_printed_on_two_sheets_at_most_and_every_side_says_that_its_data_are_simulated()
    {
        Students("Amir K");
        Terminal run = Run("catch-up", "copper-sulfate-hydrate", "--students", "away.txt", "--seed", "3", "--out", "out", "--format", "pdf", "--level", "guided");
        Assert.SkipWhen(run.Error.Contains("no browser was found", StringComparison.Ordinal), "No browser of the Chromium family was found.");
        Assert.Equal(0, run.ExitCode);
        Assert.InRange(Page().Count(System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(In("out/catch-up-amir-k.pdf")))), 3, 4);
    }

    public void Dispose() => folder.Dispose();

    private string[] Shown(string directory, string student) =>
    [
        .. Truth($"{directory}/catch-up-truth.json").GetProperty("packs").EnumerateArray().Single(p => p.GetProperty("student").GetString() == student)
            .GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("shown").GetString()!),
    ];

    private JsonElement Truth(string file) => Schemas.Check("catch-up", File.ReadAllText(In(file)));

    private void Students(params string[] names) => File.WriteAllText(In("away.txt"), string.Join('\n', names) + "\n");

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private string In(string name) => Path.Combine(folder.FullName, name);

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex Page();
}
