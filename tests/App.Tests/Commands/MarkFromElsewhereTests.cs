using System.Text.Json;
using Calx.App.Input;
using Calx.App.Live;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx mark</c> with readings from a lesson's records or from catch-up packs, and with the teacher's own marks. Values worked out by hand.</summary>
public sealed class MarkFromElsewhereTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => folder.Dispose();

    // Group 1: 0.24 and 0.14 g. Group 2: 0.26 and 0.18 g.
    [Fact]
    public async Task Each_student_is_marked_by_the_readings_of_the_own_group()
    {
        RecordId lesson = await Lesson();
        Write("answers.csv", "student,massMagnesium,massOxygen\nAda,0.24,0.14\n2,0.24,0.18\nZoe,0.24,0.14\n");
        JsonElement document = Marked(Run("mark", "answers.csv", "--lesson", $"{lesson}", "--data", "school", "--json"));

        Assert.Equal(["1: 1 1", "2: 0 1", ": 0 0"], document.GetProperty("students").EnumerateArray().Select(s => $"{s.GetProperty("group")}: {Marks(s, "massMagnesium")} {Marks(s, "massOxygen")}"));
        // Who takes another group's readings is told so.
        Assert.Contains("other-group", document.GetProperty("students")[1].GetProperty("answers")[0].GetProperty("ideas").EnumerateArray().Select(i => i.GetProperty("idea").GetString()));
        Assert.Contains(document.GetProperty("notes").EnumerateArray(), n => n.GetString()!.StartsWith("Zoe was not in that lesson", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_a_file_the_answers_and_marks_of_the_lesson_count()
    {
        RecordId lesson = await Lesson();
        JsonElement document = Marked(Run("mark", "--lesson", $"{lesson}", "--data", "school", "--json"));
        JsonElement ada = document.GetProperty("students").EnumerateArray().Single(s => s.GetProperty("student").GetString() == "Ada");

        Assert.Equal("0.41 g", ada.GetProperty("answers").EnumerateArray().Single(a => a.GetProperty("id").GetString() == "massOxygen").GetProperty("given").GetString());
        Assert.Equal((1, 0), (Marks(ada, "massOxygen"), ada.GetProperty("answers").EnumerateArray().Single(a => a.GetProperty("id").GetString() == "massOxygen").GetProperty("computed").GetInt32()));
    }

    [Fact]
    public void Catch_up_packs_are_marked_by_their_truth_however_many_heatings_were_used()
    {
        Write("away.txt", "Ada\nBen\n");
        Assert.Equal(0, Run("catch-up", "magnesium-oxide", "--students", "away.txt", "--seed", "11", "--out", "packs").ExitCode);
        JsonElement[] packs = [.. JsonDocument.Parse(File.ReadAllText(In("packs/catch-up-truth.json"))).RootElement.GetProperty("packs").EnumerateArray()];
        decimal Shown(JsonElement pack, string id) =>
            decimal.Parse(pack.GetProperty("readings").EnumerateArray().Single(r => r.GetProperty("id").GetString() == id).GetProperty("shown").GetString()!, System.Globalization.CultureInfo.InvariantCulture);
        // Ada stops after the first heating, Ben heats twice; each is a difference of the readings handed out.
        decimal ada = Shown(packs[0], "after") - Shown(packs[0], "before"), ben = Shown(packs[1], "after2") - Shown(packs[1], "before");
        Write("answers.csv", FormattableString.Invariant($"student,massOxygen\nada,{ada}\nBen,{ben}\nCy,0.10\n"));
        Terminal run = Run("mark", "answers.csv", "--practical", "magnesium-oxide", "--truth", "packs/catch-up-truth.json", "--json");
        JsonElement document = Marked(run);

        Assert.Equal([1, 1, 0], document.GetProperty("students").EnumerateArray().Select(s => Marks(s, "massOxygen")));
        Assert.Contains(document.GetProperty("notes").EnumerateArray(), n => n.GetString()!.StartsWith("Cy has no catch-up pack", StringComparison.Ordinal));
    }

    [Fact]
    public void The_teachers_own_marks_are_taken_from_a_table_and_what_fits_nobody_is_told()
    {
        Write("answers.csv", "student,group,empty,before,after,massOxygen,formula,what-happened\nAda,1,30.00,30.24,30.38,0.41,MgO,\"The weight rose.\"\n");
        Write("mine.csv", "student,answer,marks,reason\nAda,massOxygen,1,\"slip, shown\"\nAda,what-happened,1,say mass\nBob,massOxygen,1,\n");
        Terminal text = Run("mark", "answers.csv", "--practical", "magnesium-oxide", "--overrulings", "mine.csv");
        JsonElement document = Marked(Run("mark", "answers.csv", "--practical", "magnesium-oxide", "--overrulings", "mine.csv", "--json"));
        JsonElement ada = document.GetProperty("students")[0], prose = ada.GetProperty("prose")[0];

        Assert.Equal((1, "slip, shown"), (Marks(ada, "massOxygen"), ada.GetProperty("answers")[1].GetProperty("overruled").GetString()));
        Assert.Equal((1, 2, "say mass"), (prose.GetProperty("marks").GetInt32(), prose.GetProperty("of").GetInt32(), prose.GetProperty("comment").GetString()));
        Assert.Equal(("weight", true), (prose.GetProperty("words")[0].GetProperty("word").GetString(), prose.GetProperty("words")[0].GetProperty("misused").GetBoolean()));
        Assert.Equal(0, ada.GetProperty("waiting").GetInt32());
        Assert.Equal("Bob", document.GetProperty("leftOverrulings")[0].GetProperty("student").GetString());
        Assert.Contains("this mark of yours is not used: there is no student 'Bob'", text.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mine.csv:2:3: 'many' are no marks", "student,answer,marks,reason\nAda,ratio,many,\n")]
    [InlineData("mine.csv:3:1: there is no student", "student,answer,marks,reason\nAda,ratio,1,\n,ratio,1,\n")]
    [InlineData("mine.csv:1:1: the first row does not have the headings", "who,what,how\n")]
    [InlineData("mine.csv:1:1: ", "")]
    public void Bad_tables_of_marks_are_told_with_their_place(string begins, string table)
    {
        Write("answers.csv", "student,massOxygen\nAda,0.41\n");
        Write("mine.csv", table);
        Terminal run = Run("mark", "answers.csv", "--practical", "magnesium-oxide", "--overrulings", "mine.csv");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith(begins, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("truth.json:1:1: this is not JSON", "masses")]
    [InlineData("truth.json:1:1: something is missing here", "{\"practical\":\"magnesium-oxide\",\"packs\":[{}]}")]
    [InlineData("truth.json:1:1: something is missing here", "[1]")]
    [InlineData("truth.json:1:1: these packs are of the practical 'other'", "{\"practical\":\"other\",\"packs\":[]}")]
    public void A_bad_file_of_truth_is_told(string begins, string truth)
    {
        Write("answers.csv", "student,massOxygen\nAda,0.41\n");
        Write("truth.json", truth);
        Terminal run = Run("mark", "answers.csv", "--practical", "magnesium-oxide", "--truth", "truth.json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith(begins, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("calx mark: which file?")]
    [InlineData("calx mark: --lesson and --truth both", "answers.csv", "--lesson", "abcdefghijkm", "--truth", "truth.json")]
    [InlineData("calx mark: --lesson: 'x' is no id", "answers.csv", "--lesson", "x", "--data", "school")]
    [InlineData("calx mark: there are no records", "answers.csv", "--lesson", "7k2m9x4c1v0b", "--data", "school")]
    public void Words_that_do_not_fit_are_told_and_nothing_is_made(string begins, params string[] words)
    {
        Terminal run = Run(["mark", .. words]);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith(begins, run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(In("school")));
    }

    private static JsonElement Marked(Terminal run)
    {
        Assert.True(run.ExitCode == 0, run.Error);
        return Schemas.Check("marking", run.Output);
    }

    private static int Marks(JsonElement student, string id) =>
        student.GetProperty("answers").EnumerateArray().Single(a => a.GetProperty("id").GetString() == id).GetProperty("marks").GetInt32();

    private string In(string name) => Path.Combine(folder.FullName, name);

    private void Write(string name, string text) => File.WriteAllText(In(name), text);

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    /// <summary>A lesson of Larkmoor School, which is invented: Ada in group 1, Ben in group 2; Ada answered, and the teacher gave a mark.</summary>
    private async Task<RecordId> Lesson()
    {
        const string By = "the teacher";
        Directory.CreateDirectory(In("school"));
        await using RecordStore store = await RecordStore.Open(new StoreSettings(In("school/calx.db")), TimeProvider.System, Cancel);
        var school = new SchoolClass(RecordId.Draw(), "2026/27", "9F", namesForgotten: false);
        await store.AddClass(school, By, Cancel);
        await store.PutMember(new Member(school.Id, 1, "Ada"), By, Cancel);
        await store.PutMember(new Member(school.Id, 2, "Ben"), By, Cancel);
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var lesson = new Lesson(
            RecordId.Draw(), school.Id, practical.Id, practical.Version, practical.SourceText, PlanSnapshot.Text(Words()),
            new DateOnly(2026, 11, 26), "Lab 2", 2, 60, new LessonSettings(false, true, false), "R. Quill", "3");
        Assert.IsType<ChangeResult.Done>(await store.AddLesson(lesson, By, Cancel));
        (JournalCell, EntryContent)[] entries =
        [
            (new(0, 1, Acts.SeatOf, 1), new EntryContent.Happening("1")), (new(0, 1, Acts.SeatOf, 2), new EntryContent.Happening("2")),
            .. Readings(1, "30.00", "30.24", "30.38"), .. Readings(2, "28.11", "28.37", "28.55"),
            (new(0, 1, Acts.AnswerPrefix + "massOxygen", 1), new EntryContent.Answer("0.41", "g")),
            (new(0, 1, Acts.MarkPrefix + "massOxygen", 1), new EntryContent.Mark(1, 1, "a slip")),
        ];
        foreach ((JournalCell cell, EntryContent content) in entries)
        {
            Assert.IsType<AppendResult.Added>(await store.Append(lesson.Id, new JournalEntry(NewEntryId.Draw(), cell, content, "d", DateTimeOffset.UnixEpoch), Cancel));
        }

        return lesson.Id;
    }

    private static IEnumerable<(JournalCell, EntryContent)> Readings(int group, params string[] written) => new[] { "empty", "before", "after" }.Zip(written, (id, text) =>
        (new JournalCell(group, 1, id), (EntryContent)new EntryContent.Reading(WrittenNumber.TryParse(text, out WrittenNumber number) ? number : default, "g", "A", null)));

    private static PlanWords Words() => new()
    {
        Groups = 2, Students = 4, Balances = 2, Resolutions = ["0.01"], Repeatability = null, Minutes = 60, Mass = null, Trials = 1,
        Heatings = 2, NoEmpty = false, Prepared = false, Stagger = 0, Wanted = [], Conditions = [], Without = [], Moved = [],
        Alongside = [], Times = [], Kit = [], Prices = [], Metre = null,
    };
}
