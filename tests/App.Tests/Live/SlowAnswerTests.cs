using Calx.App.Live;

namespace Calx.App.Tests.Live;

/// <summary>A page never waits longer than its patience for what takes long, and hears when it is there.</summary>
public sealed class SlowAnswerTests
{
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(1), Long = TimeSpan.FromSeconds(30);

    private static CancellationToken None => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_last_answer_stands_until_the_new_one_is_there_and_whoever_went_away_without_it_is_told()
    {
        using var held = new ManualResetEventSlim();
        var told = new TaskCompletionSource();
        var slow = new SlowAnswer<string>(told.SetResult);
        Assert.Equal(("one", true), await slow.Ask(1, () => "one", Long, None));

        Assert.Equal(("one", false), await slow.Ask(2, () => Held(held, "two"), Short, None));
        Assert.False(told.Task.IsCompleted);
        held.Set();
        await told.Task.WaitAsync(Long, None);

        Assert.Equal(("two", true), await slow.Ask(2, () => throw new InvalidOperationException("It is known."), Short, None));
    }

    [Fact]
    public async Task While_one_is_worked_out_only_the_newest_question_waits()
    {
        using var held = new ManualResetEventSlim();
        var asked = new List<int>();
        var slow = new SlowAnswer<string>(() => { });
        string Work(int number)
        {
            asked.Add(number);
            return Held(held, $"{number}");
        }

        Task<(string?, bool)>[] asking = [.. Enumerable.Range(1, 4).Select(n => slow.Ask(n, () => Work(n), Long, None))];
        held.Set();

        // Who asked for the second or the third has the fourth, which is newer.
        Assert.Equal([("1", true), ("4", true), ("4", true), ("4", true)], await Task.WhenAll(asking));
        Assert.Equal([1, 4], asked);
    }

    [Fact]
    public async Task A_question_that_fails_says_so_and_the_next_one_is_worked_out()
    {
        var slow = new SlowAnswer<string>(() => { });
        await Assert.ThrowsAsync<FormatException>(() => slow.Ask(1, () => throw new FormatException(), Long, None));
        Assert.Equal(("well", true), await slow.Ask(1, () => "well", Long, None));
    }

    private static string Held(ManualResetEventSlim held, string answer)
    {
        held.Wait(Long, CancellationToken.None);
        return answer;
    }
}
