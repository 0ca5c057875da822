using System.Globalization;
using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx simulate</c>: what it writes is read by <c>calx analyse</c>, and no file is lost by it.</summary>
public sealed class SimulateCommandTests
{
    private const string Magnesium = "magnesium-oxide";

    public static TheoryData<string, string> EveryBalance
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (string practical in (string[])[Magnesium, "copper-sulfate-hydrate", "sodium-hydrogencarbonate"])
            {
                foreach (string step in (string[])["0.1", "0.01", "0.001"])
                {
                    data.Add(practical, step);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(EveryBalance))]
    public void What_it_writes_is_analysed_to_the_last_digit(string practical, string step)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Run(folder, practical, "--groups", "30", "--seed", "3", "--resolution", step, "--csv", "class.csv");

        Terminal analysed = Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", practical, "--json");

        Assert.Equal((0, ""), (analysed.ExitCode, analysed.Error));
        JsonElement answer = Schemas.Check("analysis", analysed.Output);
        Assert.Empty(answer.GetProperty("rejected").EnumerateArray());
        Assert.Equal(double.Parse(step, CultureInfo.InvariantCulture), answer.GetProperty("balance").GetProperty("resolution").GetDouble());
        string[][] rows = Rows(folder, "class.csv");
        string[] columns = [.. answer.GetProperty("columns").EnumerateArray().Select(c => c.GetProperty("reading").GetString()!)];
        Assert.Equal(["group", "empty", "before", "after", "after2"], columns[..5]);
        Assert.Equal("observations", columns[^1]);
        Assert.Equal(30, rows.Length - 2);
        foreach (string[] row in rows[2..])
        {
            JsonElement readings = answer.Group(row[0]).GetProperty("readings");
            for (int i = 1; i < columns.Length - 1; i++)
            {
                string? read = readings.TryGetProperty(columns[i], out JsonElement text) ? text.GetString() : null;
                // A dropped zero is put back by whoever reads the file: the number is the same.
                Assert.Equal(Number(row[i]), Number(read));
            }
        }
    }

    [Fact]
    public void What_is_found_in_it_is_called_simulated_on_the_terminal_in_json_and_in_the_report()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Run(folder, Magnesium, "--csv", "class.csv");

        Terminal told = Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", Magnesium, "--no-causes", "--html", "report.html");
        Terminal asJson = Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", Magnesium, "--no-causes", "--json");

        Assert.Contains("simulated and not measured", told.Output.Split('\n')[2], StringComparison.Ordinal);
        Assert.True(Schemas.Check("analysis", asJson.Output).GetProperty("simulated").GetBoolean());
        string report = File.ReadAllText(Path.Combine(folder.FullName, "report.html"));
        Assert.Contains("<p class=\"invented\">Simulated data", report, StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_of_two_ways_are_written_with_their_arm_and_analysed_apart()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Terminal written = Terminal.RunIn(
            folder.FullName, "simulate", "marble-and-acid", "--arms", "small-chips=3,ordinary=5", "--csv", "class.csv", "--json");
        JsonElement[] ways = [.. Schemas.Check("simulation", written.Output).GetProperty("arms").EnumerateArray()];
        Assert.Equal([("small-chips", 3), ("ordinary", 5)], ways.Select(w => (w.GetProperty("id").GetString()!, w.GetProperty("groups").GetInt32())));

        Terminal analysed = Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", "marble-and-acid", "--no-causes", "--json");
        JsonElement[] arms = [.. Schemas.Check("analysis", analysed.Output).GetProperty("arms").EnumerateArray()];
        Assert.Equal([(null, 5), ("small-chips", 3)], arms.Select(a => (a.GetProperty("id").GetString(), a.GetProperty("groups").GetArrayLength())));
    }

    [Fact]
    public void The_same_seed_writes_the_same_files_and_another_does_not()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Run(folder, Magnesium, "--seed", "4", "--csv", "a.csv", "--truth", "at.csv");
        Run(folder, Magnesium, "--seed", "4", "--csv", "b.csv", "--truth", "bt.csv");
        Run(folder, Magnesium, "--seed", "5", "--csv", "c.csv");
        Run(folder, Magnesium, "--seed", "4", "--groups", "3", "--csv", "d.csv");

        string[] a = Lines(folder, "a.csv");
        Assert.Equal(a, Lines(folder, "b.csv"));
        Assert.Equal(Lines(folder, "at.csv"), Lines(folder, "bt.csv"));
        Assert.NotEqual(a, Lines(folder, "c.csv"));
        Assert.Equal("Simulated and not measured: magnesium-oxide with seed 4", a[0]);
        Assert.Equal(a.Where((_, i) => i is 0 or > 1).Take(4).Select(First), Lines(folder, "d.csv").Where((_, i) => i is 0 or > 1).Select(First));

        // The first three readings: a larger class may have a column more.
        static string First(string line) => string.Join(',', line.Split(',').Take(4));
    }

    [Fact]
    public void The_truth_names_the_slip_and_what_stood_on_the_display()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Run(folder, Magnesium, "--groups", "20", "--cause", "misread", "--csv", "class.csv", "--truth", "truth.csv");

        string[][] written = Rows(folder, "class.csv")[1..];
        string[][] truth = Rows(folder, "truth.csv");
        Assert.Equal(["group", "cause", "second cause", "reading", "size", "unit", "slip", "displayed", "faults"], truth[0][..9]);
        Assert.Equal(20, truth.Length - 1);
        foreach ((string[] row, string[] readings) in truth.Skip(1).Zip(written.Skip(1)))
        {
            Assert.Equal(("misread", "", "misread"), (row[1], row[2], row[8]));
            Assert.Equal(row[3], row[6]);
            string cell = readings[Array.IndexOf(written[0], row[6])];
            Assert.NotEqual(cell, row[7]);
            Assert.Equal(Number(cell) - Number(row[7]), Number(row[4]));
            Assert.Equal("g", row[5]);
        }
    }

    [Theory]
    [InlineData("class.csv", "other.csv")]
    [InlineData("other.csv", "class.csv")]
    public void A_file_that_is_there_is_left_as_it_is(string csv, string truth)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), "our own readings");

        Terminal run = Terminal.RunIn(folder.FullName, "simulate", Magnesium, "--csv", csv, "--truth", truth);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith("class.csv:1:1: there is such a file already", run.Error, StringComparison.Ordinal);
        Assert.Equal("our own readings", File.ReadAllText(Path.Combine(folder.FullName, "class.csv")));
        Assert.Single(Directory.GetFiles(folder.FullName));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Terminal run = Terminal.RunIn(folder.FullName, "simulate", Magnesium, "--csv", "no/class.csv");
        Assert.Equal((74, ""), (run.ExitCode, run.Output));
        Assert.Equal("no/class.csv:1:1: it cannot be written there (there is no such folder)\n", run.Error);
    }

    // The limits stand in the practicals' files, with their standing: 0.30 g of magnesium ribbon.
    [Fact]
    public void More_than_a_class_may_use_is_not_simulated()
    {
        Terminal run = Terminal.Run("simulate", Magnesium, "--sample", "0.31");
        Assert.Equal((1, ""), (run.ExitCode, run.Error));
        Assert.Contains("0.31 g is more than a class may use: 0.3 g at most (ribbon only", run.Output, StringComparison.Ordinal);

        Terminal asJson = Terminal.Run("simulate", Magnesium, "--sample", "0.31", "--json");
        Assert.Equal(1, asJson.ExitCode);
        JsonElement answer = Schemas.Check("simulation", asJson.Output);
        Assert.False(answer.GetProperty("simulated").GetBoolean());
        Assert.NotNull(answer.GetProperty("reason").GetString());
        Assert.Empty(answer.GetProperty("readings").EnumerateArray());
    }

    /// <summary>A file whose own law or usual sample has grown beyond its limit is no way round it, whoever asks.</summary>
    [Theory]
    [InlineData("simulate", "mine.yaml")]
    [InlineData("plan", "mine.yaml")]
    [InlineData("papers", "mine.yaml", "--out", "papers")]
    [InlineData("catch-up", "mine.yaml", "--students", "away.txt", "--seed", "1", "--out", "packs")]
    public void A_law_that_draws_more_than_a_class_may_use_passes_no_command(params string[] words)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "away.txt"), "Ada\n");
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "practicals", "magnesium-oxide.yaml"));
        File.WriteAllText(Path.Combine(folder.FullName, "mine.yaml"), text.Replace("law: { normal: [0.24, 0.048] }", "law: { normal: [2.4, 0.048] }", StringComparison.Ordinal));

        Terminal run = Terminal.RunIn(folder.FullName, words);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("2.4 g is more than a class may use: 0.3 g at most", run.Output + run.Error, StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetFileSystemEntries(folder.FullName).Length);
    }

    [Fact]
    public void A_cause_that_cannot_count_on_the_balance_is_an_answer_too()
    {
        Terminal run = Terminal.Run("simulate", Magnesium, "--cause", "tarnished-sample", "--resolution", "0.5");
        Assert.Equal((1, ""), (run.ExitCode, run.Error));
        Assert.Contains("'tarnished-sample' alone moved no result by enough to count on this balance", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("which practical?", "")]
    [InlineData("there is no practical 'magnesum-oxide'", "magnesum-oxide")]
    [InlineData("--groups: '0' is not a whole number from 1 to 100000", Magnesium, "--groups", "0")]
    [InlineData("--groups: '100001' is not a whole number from 1 to 100000", Magnesium, "--groups", "100001")]
    [InlineData("--resolution: no balance steps by 0.03 g; expected 1, 2 or 5 times a power of ten", Magnesium, "--resolution", "0.03")]
    [InlineData("--cause: magnesium-oxide has no cause 'misred'; expected", Magnesium, "--cause", "misred")]
    [InlineData("did you mean misread?", Magnesium, "--cause", "misred")]
    [InlineData("--condition: magnesium-oxide has no condition 'x'; expected", Magnesium, "--condition", "careful", "--condition", "x")]
    [InlineData("--rounds: magnesium-oxide allows 3 at most", Magnesium, "--rounds", "4")]
    [InlineData("--arms: magnesium-oxide has no arms; leave the option out", Magnesium, "--arms", "covered")]
    [InlineData("--arms: marble-and-acid has no arm 'smal-chips'; expected ordinary, small-chips; did you mean small-chips?", "marble-and-acid", "--arms", "smal-chips")]
    [InlineData("--arms: the ways have 5 groups together, but --groups says 6", "marble-and-acid", "--arms", "small-chips=3,ordinary=2", "--groups", "6")]
    [InlineData("--arms: 'ordinary=0' cannot be read; expected an arm and how many groups do it, such as small-chips=4", "marble-and-acid", "--arms", "ordinary=0")]
    [InlineData("--arms: say of every way how many groups do it, or of none", "marble-and-acid", "--arms", "small-chips=3,ordinary")]
    [InlineData("--arms: 'ordinary' stands there twice", "marble-and-acid", "--arms", "ordinary,ordinary")]
    [InlineData("--sample: '-1' is not a number between 0", Magnesium, "--sample", "-1")]
    [InlineData("--csv and --truth are one file", Magnesium, "--csv", "a.csv", "--truth", "./a.csv")]
    public void What_cannot_be_asked_is_told(string sentence, params string[] words)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Terminal run = Terminal.RunIn(folder.FullName, ["simulate", .. words.Where(w => w.Length > 0)]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(sentence, run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.FullName));
    }

    [Fact]
    public void The_prediction_has_every_reading_and_every_quantity()
    {
        Terminal run = Terminal.Run("simulate", Magnesium, "--rounds", "2", "--condition", "careful", "--sample", "0.2", "--json");

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        JsonElement answer = Schemas.Check("simulation", run.Output);
        Assert.Equal(["empty", "before", "after", "after2"], answer.GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("id").GetString()));
        Assert.Equal(7, answer.GetProperty("quantities").GetArrayLength());
        // 1 g of magnesium makes 1.658 g of oxide (IUPAC 2024); a careful class finds about that.
        JsonElement ratio = answer.GetProperty("quantities").EnumerateArray().Single(q => q.GetProperty("id").GetString() == "massRatio").GetProperty("value");
        Assert.InRange(ratio.GetProperty("median").GetDouble(), 1.55, 1.66);
        JsonElement sample = answer.GetProperty("quantities").EnumerateArray().Single(q => q.GetProperty("id").GetString() == "sampleMass").GetProperty("value");
        Assert.Equal(0.2, sample.GetProperty("median").GetDouble(), 0.0051);
    }

    private static void Run(TemporaryFolder folder, params string[] words)
    {
        Terminal run = Terminal.RunIn(folder.FullName, ["simulate", .. words]);
        Assert.Equal(0, run.ExitCode);
    }

    private static string[] Lines(TemporaryFolder folder, string name) => File.ReadAllLines(Path.Combine(folder.FullName, name));

    private static string[][] Rows(TemporaryFolder folder, string name) => [.. Lines(folder, name).Select(Cells)];

    /// <summary>The cells of a line; in what is written here quotation marks only stand round a cell with a comma.</summary>
    private static string[] Cells(string line)
    {
        string joined = string.Concat(line.Split('"').Select((part, i) => i % 2 == 1 ? part.Replace(',', '\0') : part));
        return [.. joined.Split(',').Select(cell => cell.Replace('\0', ','))];
    }

    private static decimal? Number(string? text) =>
        string.IsNullOrEmpty(text) ? null : decimal.Parse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
