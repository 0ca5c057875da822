using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.App.Tests.Serving;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>The first page.</summary>
public sealed class HomeTests
{
    [Fact]
    public async Task An_empty_program_says_what_to_do_first()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page("/");
        IElement[] steps = [.. page.QuerySelectorAll("ol.firststeps li")];
        Assert.Equal(3, steps.Length);
        Assert.Contains("Add a class", steps[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Choose a practical", steps[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Make a lesson", steps[2].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lesson_to_come_stands_under_next_and_one_whose_door_is_open_under_on_now()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(new FixedClock(new DateTimeOffset(2026, 11, 26, 9, 0, 0, TimeSpan.Zero)));
        string lesson = await screen.NewLesson();
        Assert.Equal("Today", (await screen.Page("/")).QuerySelector(".nextlist .when")!.TextContent);
        await screen.Send($"{lesson}/door");
        IDocument open = await screen.Page("/");
        Assert.Equal("On now", open.QuerySelector("h1")!.TextContent);
        Assert.NotNull(open.QuerySelector($"a[href='{lesson}/live']"));
        Assert.NotNull(open.QuerySelector($"a[href='{lesson}/projector']"));
    }

    [Fact]
    public async Task A_new_lesson_can_be_made_while_another_is_on()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(new FixedClock(new DateTimeOffset(2026, 11, 26, 9, 0, 0, TimeSpan.Zero)));
        await screen.Send($"{await screen.NewLesson()}/door");
        Assert.NotNull((await screen.Page("/")).QuerySelector("main a[href='/lessons/new']"));
    }

    [Fact]
    public async Task A_lesson_that_has_ended_is_on_no_longer()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(new FixedClock(new DateTimeOffset(2026, 11, 26, 9, 0, 0, TimeSpan.Zero)));
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/write", ("id", NewEntryId.Draw().ToString()), ("kind", "happening"), ("group", "0"), ("trial", "1"), ("what", Acts.Began), ("text", ""), ("back", lesson));
        Assert.Equal("On now", (await screen.Page("/")).QuerySelector("h1")!.TextContent);
        await screen.Send($"{lesson}/end");
        IDocument page = await screen.Page("/");
        Assert.DoesNotContain("On now", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Earlier", page.Body.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_program_that_phones_cannot_reach_says_so_on_its_first_page(bool openToRoom)
    {
        await using OpenHost host = await OpenHost.Start(openToRoom);
        TeachersKey key = host.Services.GetRequiredService<TeachersKey>();
        await key.Set("four plain words here", TestContext.Current.CancellationToken);
        using HttpClient browser = host.Browser();
        await browser.PostAsync(
            "/sign-in", new FormUrlEncodedContent([KeyValuePair.Create("passphrase", "four plain words here")]), TestContext.Current.CancellationToken);
        string page = await browser.GetStringAsync("/", TestContext.Current.CancellationToken);
        Assert.Contains("Start here", page, StringComparison.Ordinal);
        Assert.Equal(!openToRoom, page.Contains("calx serve --lan", StringComparison.Ordinal));
    }
}
