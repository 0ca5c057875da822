using Calx.App.Live;
using Calx.Records.Journal;
using Calx.Records.Storage;

namespace Calx.Browser.Tests.Students;

/// <summary>Students answer on a phone, one question after the other, with the keys under their thumb and with or without a connection.</summary>
public sealed class AnsweringTests(Chromium chromium)
{
    [Fact]
    public async Task Five_answers_with_the_connection_cut_in_the_middle_arrive_once_and_in_order()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage phone = await lab.Phone(group: 1);
        foreach (string written in (string[])["28.10", "28.34"])
        {
            await phone.GoOnToReading();
            await phone.Type(written);
        }

        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await phone.BeginToAnswer(member: 1);
        await Expect(phone.Locator(".own")).ToContainTextAsync("28.34");
        await Expect(phone.Locator(".own")).ToContainTextAsync("Your group’s table has no mass after heating yet.");
        await Pictures.Keep(phone, "student-answer");
        await phone.Answer("0.24");
        await phone.Answer("0.14");
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await phone.Context.SetOfflineAsync(true);
        await phone.Answer("9.9 x 10^-3");
        // Back to one that was sent, and a change of it, and on: all without a connection.
        await phone.Question().GetByText("Before").ClickAsync();
        await phone.Question().GetByText("Before").ClickAsync();
        await Expect(phone.Question().Locator("h1")).ToContainTextAsync("oxygen");
        await phone.Question().GetByText("Change your answer").ClickAsync();
        await phone.Question().Locator(".figure").FillAsync("0.15");
        await phone.Question().GetByText("Send").ClickAsync();
        await phone.Answer("0.0088");
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("No connection: 3 wait to be sent");
        Assert.Equal(3, await phone.Waiting());

        // Half typed, and the page is reloaded when the connection is back: it is there again.
        await Expect(phone.Question().Locator("h1")).ToContainTextAsync("Mg : O");
        await phone.Question().Locator(".figure").FillAsync("1.1");
        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await phone.ReloadAsync();
        await Expect(phone.Question().Locator(".figure")).ToHaveValueAsync("1.1");
        await phone.Press(":", "1");
        await Expect(phone.Question().Locator(".figure")).ToHaveValueAsync("1.1 : 1");
        await phone.Question().GetByText("Send").ClickAsync();
        await phone.Locator("nav.parts [data-go=all]").ClickAsync();
        await Expect(phone.Locator(".overview")).ToContainTextAsync("1.1 : 1");

        Assert.Equal(0, await phone.Waiting());
        Assert.Equal(
            ["massMagnesium 0.24 g", "massOxygen 0.14 g", "molesMagnesium 9.9 x 10^-3 mol", "massOxygen 0.15 g", "molesOxygen 0.0088 mol", "ratio 1.1 : 1 "],
            await AnswersIn(lab));
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_phone_is_handed_on_and_each_keeps_the_own_answers_and_what_is_half_typed()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        IPage phone = await lab.Phone(group: 1);
        await phone.BeginToAnswer(member: 1);
        await phone.Answer("0.24");
        await phone.Press("0", "7");
        await phone.HandOn(member: 2);
        await Expect(phone.Question().Locator("h1")).ToContainTextAsync("magnesium");
        await Expect(phone.Question().Locator(".figure")).ToHaveValueAsync("");
        await phone.Answer("0.31");
        await phone.HandOn(member: 1);
        await Expect(phone.Question().Locator(".figure")).ToHaveValueAsync("07");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task An_essay_in_a_number_cell_comes_back_to_be_put_right()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        IPage phone = await lab.Phone(group: 1);
        await phone.BeginToAnswer(member: 1);
        await phone.Question().Locator(".figure").FillAsync("a quarter of a gram");
        await phone.Question().GetByText("Send").ClickAsync();
        await Expect(phone.Locator("#refused")).ToContainTextAsync("is no number");
        await phone.Locator("#refused").GetByText("Type it again").ClickAsync();
        await Expect(phone.Question().Locator(".figure")).ToHaveValueAsync("a quarter of a gram");
        await phone.Question().Locator(".figure").FillAsync("0.25");
        await phone.Question().GetByText("Send").ClickAsync();
        await Expect(phone.Question().Locator("h1")).ToContainTextAsync("oxygen");
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        Assert.Equal(["massMagnesium 0.25 g"], await AnswersIn(lab));
        lab.NothingAmiss();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task The_pages_have_nothing_serious_and_are_not_wider_than_their_screen(ColorScheme scheme)
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        var found = new List<string>();
        foreach (BrowserNewContextOptions screen in (BrowserNewContextOptions[])[Screens.Phone(scheme), Screens.Laptop(scheme)])
        {
            IPage page = await lab.Phone(group: screen.IsMobile == true ? 1 : 2, screen.ForAxe());
            await page.GotoAsync("/answers");
            found.AddRange(await Accessibility.SeriousOn(page));
            await page.BeginToAnswer(member: screen.IsMobile == true ? 1 : 2);
            found.AddRange(await Accessibility.SeriousOn(page));
            await page.Answer("0.24");
            await page.Question().GetByText("Before").ClickAsync();
            found.AddRange(await Accessibility.SeriousOn(page));
            await page.Locator("nav.parts [data-go=all]").ClickAsync();
            found.AddRange(await Accessibility.SeriousOn(page));
            await page.GotoAsync("/answers?q=better");
            found.AddRange(await Accessibility.SeriousOn(page));
            Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), page.Url);
        }

        Assert.Empty(found);
        lab.NothingAmiss();
    }

    private static async Task<string[]> AnswersIn(Lab lab)
    {
        await using RecordStore store = await RehearsedLesson.Open(lab.DataFolder);
        return
        [
            .. (await store.Entries(lab.Lesson.Id)).Where(e => e.Entry.Content is EntryContent.Answer).Select(e =>
                $"{e.Entry.Cell.What[Acts.AnswerPrefix.Length..]} {((EntryContent.Answer)e.Entry.Content).Text} {((EntryContent.Answer)e.Entry.Content).Unit}"),
        ];
    }
}
