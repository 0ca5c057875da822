namespace Calx.Browser.Tests.Students;

/// <summary>A group that lost its sample goes on with a simulated balance.</summary>
public sealed class SimulatedTests(Chromium chromium)
{
    [Fact]
    public async Task Its_page_shows_a_display_to_write_down_and_asks_what_to_do_after_each_heating()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage teacher = await lab.Teacher(), phone = await lab.Phone(group: 2);
        await teacher.GotoAsync($"{lab.LessonPath}/groups/2");
        await teacher.GetByRole(AriaRole.Button, new() { Name = "Goes on with simulated data" }).ClickAsync();
        ILocator display = phone.Stage().Locator(".display");
        await Expect(display).ToBeVisibleAsync();
        await Pictures.Keep(phone, "student-simulated");
        // All of the form stands above the parts of the page on a small phone too.
        await phone.SetViewportSizeAsync(360, 740);
        LocatorBoundingBoxResult send = (await phone.Stage().Locator("form[data-typing] > button.tall").BoundingBoxAsync())!;
        LocatorBoundingBoxResult parts = (await phone.Locator(".parts").BoundingBoxAsync())!;
        Assert.True(send.Y + send.Height <= parts.Y, $"'Send' ends at {send.Y + send.Height:0}, and the parts begin at {parts.Y:0}.");
        for (int i = 0; i < 3; i++)
        {
            await Expect(phone.Stage().Locator(".place")).ToHaveAttributeAsync("data-kind", "read");
            string shown = (await display.InnerTextAsync()).Split(' ')[0];
            await phone.Stage().Locator(".figure").FillAsync(shown);
            string? what = await phone.Stage().Locator("[data-typing]").GetAttributeAsync("data-what");
            await phone.Stage().Locator("form[data-typing] > button.tall").ClickAsync();
            await Expect(phone.Stage().Locator($"[data-typing][data-what='{what}']")).ToHaveCountAsync(0);
        }

        await Expect(phone.Stage().Locator("h1")).ToHaveTextAsync("Heat again or stop?");
        await phone.Open("sent");
        await Expect(phone.Locator("#sent small").First).ToHaveTextAsync("simulated");
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        await Expect(teacher.Locator("article[aria-labelledby=t2]")).ToContainTextAsync("goes on with simulated data");
        lab.NothingAmiss();
    }
}
