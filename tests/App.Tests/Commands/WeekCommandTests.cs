using Calx.App.Input;
using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx papers week</c>, and papers of a practical that was signed in the records.</summary>
public sealed class WeekCommandTests : IDisposable
{
    private const string By = "the teacher";

    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_week_of_a_day_is_written_in_each_form()
    {
        await Fill("3", "5");
        Terminal run = Run("papers", "week", "--data", "school", "--from", "2026-11-26", "--out", "out");
        Assert.Equal((0, ""), (run.ExitCode, run.Output));
        Assert.Equal(["technician-week.docx", "technician-week.html"], Directory.GetFiles(In("out")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        string sheet = File.ReadAllText(In("out/technician-week.html"));
        Assert.Contains("Thursday 26 November", sheet, StringComparison.Ordinal);
        Assert.Contains("R. Quill", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"draft\"", sheet, StringComparison.Ordinal);
        run = Run("papers", "week", "--data", "school", "--from", "2026-11-26", "--out", "out");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("there is such a file already", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_than_there_is_in_one_period_is_exit_code_1_with_the_paper_written()
    {
        await Fill("3", "3");
        Terminal run = Run("papers", "week", "--data", "school", "--from", "2026-11-24", "--out", "out", "--format", "html");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("calx papers week: Thursday 26 November, period 3, 9F, Lab 2 and period 3, 9F, Lab 2: together they plan with 4 balances, and the school has 1.", run.Error, StringComparison.Ordinal);
        Assert.Contains("To settle first", File.ReadAllText(In("out/technician-week.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("calx papers week: into which folder? For example: calx papers week --out papers", "papers", "week", "--data", "school")]
    [InlineData("calx papers week: --from: 'soon' is no day; a date such as 2026-11-26 was expected", "papers", "week", "--data", "school", "--out", "out", "--from", "soon")]
    [InlineData("calx papers week: there are no records in ", "papers", "week", "--data", "school", "--out", "out")]
    [InlineData("calx papers: there are no records in ", "papers", "magnesium-oxide", "--data", "school", "--out", "out")]
    public void A_fault_is_told_and_nothing_is_made(string begins, params string[] words)
    {
        Terminal run = Run(words);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith(begins, run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(In("out")) || Path.Exists(In("school")));
    }

    [Fact]
    public async Task Papers_of_a_plan_that_was_signed_in_the_records_are_no_draft()
    {
        await Fill("3", "5");
        Assert.Contains("class=\"draft\"", Requisition("without", []), StringComparison.Ordinal);
        Assert.Contains("class=\"draft\"", Requisition("unsigned", ["--data", "school"]), StringComparison.Ordinal);
        await using (RecordStore store = await Open())
        {
            Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
            string fingerprint = SafetyFingerprint.Of(new PlanCheck(practical, Words()).Choice()!.Settings);
            await store.Sign(new Signature(practical.Id, practical.Version, fingerprint, "RQ", DateTimeOffset.UnixEpoch), By, Cancel);
        }

        Assert.DoesNotContain("class=\"draft\"", Requisition("signed", ["--data", "school"]), StringComparison.Ordinal);
        // Another amount asks again.
        Assert.Contains("class=\"draft\"", Requisition("other", ["--data", "school", "--mass", "0.2"]), StringComparison.Ordinal);
        Assert.Contains("class=\"draft\"", Requisition("still", []), StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();

    private string Requisition(string name, string[] words)
    {
        Terminal run = Run(["papers", "magnesium-oxide", "--groups", "6", "--set", "requisition", "--format", "html", "--out", name, .. words]);
        Assert.Equal((0, ""), (run.ExitCode, run.Output));
        return File.ReadAllText(In($"{name}/requisition.html"));
    }

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private string In(string name) => Path.Combine(folder.FullName, name);

    private Task<RecordStore> Open() => RecordStore.Open(new StoreSettings(In("school/calx.db")), TimeProvider.System, Cancel);

    private static PlanWords Words() => new()
    {
        Groups = 6, Students = 12, Balances = 2, Resolutions = ["0.01"], Repeatability = null, Minutes = 60, Mass = null, Trials = 1,
        Heatings = 2, NoEmpty = false, Prepared = false, Stagger = 0, Wanted = [], Conditions = [], Without = [], Moved = [],
        Alongside = [], Times = [], Kit = [], Prices = [], Metre = null,
    };

    /// <summary>A balance and two lessons of 26 November 2026 at Larkmoor School, which is invented.</summary>
    private async Task Fill(params string[] periods)
    {
        Directory.CreateDirectory(In("school"));
        await using RecordStore store = await Open();
        var school = new SchoolClass(RecordId.Draw(), "2026/27", "9F", namesForgotten: false);
        await store.AddClass(school, By, Cancel);
        await store.AddBalance(new KeptBalance(RecordId.Draw(), "A", "by the window", "0.01"), By, Cancel);
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        foreach (string period in periods)
        {
            var lesson = new Lesson(
                RecordId.Draw(), school.Id, practical.Id, practical.Version, practical.SourceText, PlanSnapshot.Text(Words()),
                new DateOnly(2026, 11, 26), "Lab 2", 6, 60, new LessonSettings(false, true, false), "R. Quill", period);
            Assert.IsType<ChangeResult.Done>(await store.AddLesson(lesson, By, Cancel));
        }
    }
}
