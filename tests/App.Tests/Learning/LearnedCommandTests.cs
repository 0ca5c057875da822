using System.Text.Json;
using Calx.App.Demo;
using Calx.Records.Storage;

namespace Calx.App.Tests.Learning;

/// <summary><c>calx practicals learned</c>, and plans and simulations with what was accepted.</summary>
public sealed class LearnedCommandTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task What_was_learned_is_listed_accepted_and_in_the_next_plan()
    {
        await Fill(18, 18, 18);
        JsonElement learned = Schemas.Check("learned", Run("practicals", "learned", "magnesium-oxide", "--data", "school", "--json").Output);
        JsonElement cool = learned.GetProperty("numbers").EnumerateArray().Single(n => n.GetProperty("id").GetString() == "time:cool");
        Assert.Equal((3, 12, 12.0), (learned.GetProperty("lessons").GetInt32(), cool.GetProperty("cases").GetInt32(), cool.GetProperty("before").GetProperty("likely").GetDouble()));
        Assert.Equal(JsonValueKind.Null, learned.GetProperty("inForce").ValueKind);

        Terminal accepted = Run("practicals", "learned", "magnesium-oxide", "--data", "school", "--accept", "time:cool", "--accept", "fault:misread", "--by", "LM");
        Assert.Equal((0, ""), (accepted.ExitCode, accepted.Error));
        Assert.Contains("Accepted", accepted.Output, StringComparison.Ordinal);
        JsonElement plan = Schemas.Check("plan", Plan("--learned", "--data", "school").Output).GetProperty("plan").GetProperty("learned");
        Assert.Equal(3, plan.GetProperty("lessons").GetInt32());
        Assert.InRange(plan.GetProperty("times").GetProperty("cool")[1].GetDouble(), 14, 18);
        JsonElement simulated = Schemas.Check("simulation", Run("simulate", "magnesium-oxide", "--learned", "--data", "school", "--json").Output);
        Assert.True(simulated.GetProperty("learned").GetProperty("rates").TryGetProperty("misread", out _));

        Assert.Equal(0, Run("practicals", "learned", "magnesium-oxide", "--data", "school", "--take-back", "time:cool", "--take-back", "fault:misread", "--by", "LM").ExitCode);
        Assert.Equal(Plan().Output, Plan("--learned", "--data", "school").Output);
    }

    /// <summary>No lessons: nothing changes by a byte.</summary>
    [Fact]
    public async Task With_nothing_accepted_a_plan_and_a_simulation_are_the_file_s_to_the_byte()
    {
        await Fill();
        Assert.Equal(Plan().Output, Plan("--learned", "--data", "school").Output);
        string[] simulate = ["simulate", "magnesium-oxide", "--json"];
        Assert.Equal(Run(simulate).Output, Run([.. simulate, "--learned", "--data", "school"]).Output);
        Terminal nothing = Run("practicals", "learned", "magnesium-oxide", "--data", "school");
        Assert.Equal(1, nothing.ExitCode);
        Assert.Contains("No lesson of this practical is over yet", nothing.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("which practical?", "practicals", "learned")]
    [InlineData("there are no records in ", "practicals", "learned", "magnesium-oxide", "--data", "school")]
    [InlineData("there are no records in ", "plan", "magnesium-oxide", "--learned", "--data", "school")]
    [InlineData("calx plan: a database, school and class are asked only for learned numbers; add --learned, or leave them out", "plan", "magnesium-oxide", "--school", "Fen End")]
    [InlineData("calx simulate: a database, school and class are asked only for learned numbers; add --learned, or leave them out", "simulate", "magnesium-oxide", "--class", "9F")]
    public void A_fault_is_told(string expected, params string[] words)
    {
        Terminal run = Run(words);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Initials of 1 to 12", "--accept", "time:cool")]
    [InlineData("was learned of 'time:nothing'", "--accept", "time:nothing", "--by", "LM")]
    [InlineData("'time:cool' is not an accepted number", "--take-back", "time:cool", "--by", "LM")]
    [InlineData("no class '8Z'", "--accept", "time:cool", "--class", "8Z", "--by", "LM")]
    public async Task What_cannot_be_accepted_or_taken_back_is_told_and_nothing_is_kept(string expected, params string[] words)
    {
        await Fill(18);
        Terminal run = Run(["practicals", "learned", "magnesium-oxide", "--data", "school", .. words]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        await using RecordStore store = await Open(TimeProvider.System);
        Assert.Empty(await store.Decisions("magnesium-oxide", Cancel));
    }

    private Terminal Plan(params string[] words) => Run(["plan", "magnesium-oxide", "--groups", "2", "--minutes", "200", "--no-ways", "--json", .. words]);

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private async Task Fill(params double[] waited)
    {
        Directory.CreateDirectory(Path.Combine(folder.FullName, "school"));
        var clock = new ShiftedClock();
        await using RecordStore store = await Open(clock);
        await HeldLessons.Write(store, clock, waited);
    }

    private Task<RecordStore> Open(TimeProvider clock) =>
        RecordStore.Open(new StoreSettings(Path.Combine(folder.FullName, "school", "calx.db")), clock, Cancel);
}
