namespace Calx.Browser.Tests.Students;

/// <summary>A lesson that was turned into a cover lesson, on the teacher's laptop and on a phone.</summary>
public sealed class CoverLessonTests(Chromium chromium)
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task It_is_turned_on_its_page_and_a_phone_types_simulated_readings(ColorScheme scheme)
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3, Begins = false });
        IPage teacher = await lab.Teacher(Screens.Laptop(scheme).ForAxe());
        await teacher.GotoAsync(lab.LessonPath);
        await teacher.GetByText("Turn this lesson into a cover lesson").ClickAsync();
        var found = new List<string>(await Accessibility.SeriousOn(teacher));
        await teacher.GetByLabel("This lesson has no practical work").CheckAsync();
        await teacher.GetByRole(AriaRole.Button, new() { Name = "Turn it into a cover lesson" }).ClickAsync();
        await Expect(teacher.GetByRole(AriaRole.Button, new() { Name = "Make it a practical lesson again" })).ToBeVisibleAsync();
        found.AddRange(await Accessibility.SeriousOn(teacher));
        await teacher.GotoAsync($"{lab.LessonPath}/papers");
        found.AddRange(await Accessibility.SeriousOn(teacher));

        IPage phone = await lab.Phone(group: 2, Screens.Phone(scheme).ForAxe());
        ILocator display = phone.Stage().Locator(".display");
        await Expect(display).ToBeVisibleAsync();
        await Expect(phone.Locator(".announced")).ToContainTextAsync("No practical work today");
        found.AddRange(await Accessibility.SeriousOn(phone));
        LocatorBoundingBoxResult send = (await phone.Stage().Locator("form[data-typing] > button.tall").BoundingBoxAsync())!;
        LocatorBoundingBoxResult parts = (await phone.Locator(".parts").BoundingBoxAsync())!;
        Assert.True(send.Y + send.Height <= parts.Y, $"'Send' ends at {send.Y + send.Height:0}, and the parts begin at {parts.Y:0}.");
        if (scheme == ColorScheme.Light)
        {
            await Pictures.Keep(phone, "student-cover");
        }

        for (int i = 0; i < 3; i++)
        {
            await Expect(phone.Stage().Locator(".place")).ToHaveAttributeAsync("data-kind", "read");
            await phone.Stage().Locator(".figure").FillAsync((await display.InnerTextAsync()).Split(' ')[0]);
            string? what = await phone.Stage().Locator("[data-typing]").GetAttributeAsync("data-what");
            await phone.Stage().Locator("form[data-typing] > button.tall").ClickAsync();
            await Expect(phone.Stage().Locator($"[data-typing][data-what='{what}']")).ToHaveCountAsync(0);
        }

        await Expect(phone.Stage().Locator("h1")).ToHaveTextAsync("Has the mass stopped changing?");
        found.AddRange(await Accessibility.SeriousOn(phone));
        foreach (string part in (string[])["sent", "seen", "help"])
        {
            await phone.Open(part);
            found.AddRange(await Accessibility.SeriousOn(phone));
            Assert.True(await phone.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= 360);
        }

        Assert.Empty(found);
        lab.NothingAmiss();
    }
}
