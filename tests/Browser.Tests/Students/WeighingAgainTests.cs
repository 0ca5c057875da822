using System.Text.RegularExpressions;

namespace Calx.Browser.Tests.Students;

/// <summary>A reading that is typed a second time: after a question, and when what was weighed warm is cool.</summary>
public sealed class WeighingAgainTests(Chromium chromium)
{
    [Fact]
    public async Task What_is_typed_after_a_question_counts_without_another_question_about_its_decimals()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await Asked(lab);
        await phone.Locator("#ask").GetByRole(AriaRole.Button, new() { Name = "Type it again" }).ClickAsync();
        await phone.Type("28.34");
        await Expect(phone.Locator(".doubt")).ToHaveCountAsync(0);
        await phone.Open("sent");
        await Expect(phone.Locator("#sent .value").Nth(1)).ToHaveTextAsync("28.34");
        await Expect(phone.Locator("#sent s")).ToHaveTextAsync(new Regex("82\\.34"));
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_correction_that_is_not_taken_fills_the_stage_until_it_was_read()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await Asked(lab);
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/groups/1/cells/1/before");
        await teacher.Locator("#written").FillAsync("28.43");
        await teacher.Locator("#reason").FillAsync("the paper record says so");
        await teacher.GetByRole(AriaRole.Button, new() { Name = "Correct", Exact = true }).ClickAsync();
        await Expect(teacher.Locator("table s")).ToHaveTextAsync("82.34");

        await phone.Locator("#ask").GetByRole(AriaRole.Button, new() { Name = "Type it again" }).ClickAsync();
        await phone.Type("28.34");
        await Expect(phone.Locator("#refused h1")).ToHaveTextAsync("Not taken");
        await Expect(phone.Locator("#refused")).ToContainTextAsync("Your teacher has decided on this reading.");
        await Expect(phone.Stage()).ToBeHiddenAsync();
        await Pictures.Keep(phone, "student-not-taken");
        await phone.Locator("#refused").GetByRole(AriaRole.Button, new() { Name = "We have read this" }).ClickAsync();
        await Expect(phone.Stage()).ToBeVisibleAsync();
        await teacher.GotoAsync($"{lab.LessonPath}/groups/1");
        await Expect(teacher.Locator("[data-key=asks]")).ToContainTextAsync("82.34 should be 28.34");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task What_was_weighed_too_warm_is_weighed_again_without_a_connection()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 2);
        await phone.WeighAndLight();
        await phone.FlameOut().ClickAsync();
        await phone.GoOnToReading();
        await phone.Type("28.38");
        await phone.Locator(".doubt").GetByRole(AriaRole.Button, new() { Name = "Send 28.38" }).ClickAsync();
        await phone.Stage().GetByRole(AriaRole.Button, new() { Name = "Stop here" }).ClickAsync();
        ILocator again = phone.Stage().GetByRole(AriaRole.Button, new() { Name = "It is cool: type it again" });
        await Expect(again).ToBeVisibleAsync();
        await Pictures.Keep(phone, "student-weigh-again");
        await phone.Context.SetOfflineAsync(true);
        foreach (string written in (string[])["28.49", "28.50"])
        {
            await again.ClickAsync();
            await Expect(phone.Stage().Locator("h1")).ToContainTextAsync("Now cool:");
            await phone.Type(written);
        }

        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await phone.Open("sent");
        await Expect(phone.Locator("#sent .value").Nth(2)).ToHaveTextAsync("28.50");
        await Expect(phone.Locator("#sent li").Nth(2)).ToContainTextAsync("28.38 (weighed again when cool)");
        await Expect(phone.Locator("#sent .fault")).ToHaveCountAsync(0);
        lab.NothingAmiss();
    }

    /// <summary>A phone of group 1 that has just sent two digits in the wrong order and is asked about them.</summary>
    private static async Task<IPage> Asked(Lab lab)
    {
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        await phone.Type("28.10");
        await Expect(phone.Locator("#live [data-kept]")).Not.ToHaveAttributeAsync("data-kept", "");
        while (await phone.Waiting() > 0)
        {
            await phone.WaitForTimeoutAsync(50);
        }

        // The first may be one of the ordinary ones that are asked about as well.
        await phone.RemoveLocatorHandlerAsync(phone.Locator("#ask:not(.hidden)"));
        if (await phone.Locator("#ask").IsVisibleAsync())
        {
            await phone.Locator("#ask").GetByRole(AriaRole.Button, new() { Name = "It is right" }).ClickAsync();
        }

        await phone.GoOnToReading();
        await phone.Type("82.34");
        await Expect(phone.Locator("#ask")).ToContainTextAsync("Look again at the display.");
        return phone;
    }
}
