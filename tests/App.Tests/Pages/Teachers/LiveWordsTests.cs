using AngleSharp.Dom;
using Calx.App.Live;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>What the live view says of the lesson agrees with what its tiles say.</summary>
public sealed class LiveWordsTests
{
    [Fact]
    public async Task Straight_after_the_beginning_all_minutes_are_left()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Begun(screen, "?groups=4&minutes=120");
        Assert.Equal("120", (await screen.Page($"{lesson}/live")).QuerySelector(".livehead h1 .figure")!.TextContent);
        Assert.Equal("120", (await screen.Page($"{lesson}/projector")).QuerySelector(".left")!.TextContent);
    }

    [Fact]
    public async Task The_forecast_names_the_step_of_the_tile_before_and_after_a_tap()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        // One group that weighs by itself waits for nobody, so the end waits for it.
        string lesson = await Begun(screen, "?groups=1&balances=1&minutes=120");
        Agree(await screen.Page($"{lesson}/live"));
        await Tell(screen, lesson, 0, Acts.WorkBegan, "");
        Agree(await screen.Page($"{lesson}/live"));
        foreach (string step in (string[])["burn", "cool"])
        {
            await Tell(screen, lesson, 1, Acts.AtStep, step);
            Agree(await screen.Page($"{lesson}/live"));
        }
    }

    private static void Agree(IDocument page)
    {
        string step = page.QuerySelector(".tile .step")!.TextContent.Split(", ")[0];
        string sentence = page.QuerySelectorAll(".forecast li")[^1].TextContent;
        Assert.EndsWith($"waits for group 1 (100 in 100), now: {step}.", sentence, StringComparison.Ordinal);
    }

    private static async Task<string> Begun(TeachersScreen screen, string plan)
    {
        string lesson = await screen.NewLesson(plan);
        await Tell(screen, lesson, 0, Acts.Began, "");
        return lesson;
    }

    private static Task<string> Tell(TeachersScreen screen, string lesson, int group, string what, string text) => screen.Send(
        $"{lesson}/write",
        ("id", NewEntryId.Draw().ToString()), ("kind", "happening"), ("group", group == 0 ? "0" : "1"), ("trial", "1"), ("what", what), ("text", text), ("back", lesson));
}
