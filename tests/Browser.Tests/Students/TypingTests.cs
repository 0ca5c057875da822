using System.Text.RegularExpressions;

namespace Calx.Browser.Tests.Students;

/// <summary>A group types its readings on a phone.</summary>
public sealed class TypingTests(Chromium chromium)
{
    [Fact]
    public async Task A_reading_without_its_last_zero_is_asked_about_and_then_sent_as_the_balance_shows_it()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 1);
        await Pictures.Keep(phone, "student-step");
        await phone.GoOnToReading();
        await Pictures.Keep(phone, "student-reading");

        await phone.Type("28.1");
        await Expect(phone.Locator(".doubt")).ToContainTextAsync("Your balance shows two decimals: 28.10?");
        await Pictures.Keep(phone, "student-decimals");
        await phone.Locator(".doubt button", new PageLocatorOptions { HasTextString = "Yes" }).ClickAsync();
        await phone.Open("sent");

        await Expect(phone.Locator("#sent .value").First).ToHaveTextAsync(new Regex("^28\\.10"));
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await Pictures.Keep(phone, "student-sent");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_letter_picked_before_the_page_is_put_up_anew_stays_picked()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 1);
        await phone.Context.SetOfflineAsync(true);
        await phone.GoOnToReading();
        await phone.Stage().Locator(".letters label:has(input[value='A'])").ClickAsync();
        await phone.Stage().Locator("[name=vessel]").FillAsync("7");
        await phone.Stage().Locator(".figure").FillAsync("28.10");
        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");

        // What was done without a connection has come back from the program: the same step, drawn by it.
        await Expect(phone.Locator("#live .place").First).ToHaveAttributeAsync("data-kind", "read");
        await phone.Stage().Locator("form[data-typing] > button.tall").ClickAsync();
        await phone.Open("sent");
        await Expect(phone.Locator("#sent .value").First).ToHaveTextAsync(new Regex("^28\\.10"));
        await Expect(phone.Locator("#sent")).ToContainTextAsync("vessel 7");
    }

    [Fact]
    public async Task A_group_sees_and_changes_nothing_of_another()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 2);
        using Phone other = await Phone.Join(lab.Program.Client(), lab.Lesson.Code, group: 3);
        await other.Send(new TypedEntry("0123456789abcdef0123456789abcdef", "empty", "31.77"));
        await phone.ReloadAsync();
        await Expect(phone.Locator("#table")).ToHaveAttributeAsync("data-group", "2");
        Assert.DoesNotContain("31.77", await phone.ContentAsync(), StringComparison.Ordinal);
        await phone.GotoAsync("/table?group=3");
        Assert.DoesNotContain("31.77", await phone.ContentAsync(), StringComparison.Ordinal);
        lab.NothingAmiss();
    }

    [Fact]
    public async Task In_an_assessed_lesson_nothing_is_asked_about_and_nothing_is_hinted()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Assessed = true });
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        await phone.Type("2.1");
        await phone.Open("sent");
        await Expect(phone.Locator("#sent .value").First).ToHaveTextAsync(new Regex("^2\\.1\\b"));
        await Expect(phone.Locator(".doubt")).ToHaveCountAsync(0);
        await Expect(phone.Locator("#ask")).ToBeHiddenAsync();
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_reading_that_cannot_well_be_is_asked_about_once_in_neutral_words_and_kept_if_it_is_right()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 5);
        ILocator ask = phone.Locator("#ask");
        await phone.GoOnToReading();
        await phone.RemoveLocatorHandlerAsync(phone.Locator("#ask:not(.hidden)"));
        await phone.Type("28.10");

        // This one may be one of the ordinary ones that are asked about too: whether it is comes with the word that it was kept.
        await Expect(phone.Locator("#live [data-kept]")).Not.ToHaveAttributeAsync("data-kept", "");
        while (await phone.Waiting() > 0)
        {
            await phone.WaitForTimeoutAsync(50);
        }

        if (await ask.IsVisibleAsync())
        {
            await ask.GetByRole(AriaRole.Button, new() { Name = "It is right" }).ClickAsync();
        }

        await phone.GoOnToReading();

        // Two digits changed places: 28.34 was meant.
        await phone.Type("82.34");
        await Expect(ask).ToContainTextAsync("Look again at the display.");
        await Expect(ask).Not.ToContainTextAsync(new Regex("28|odd|wrong|expected|sure"));
        await Pictures.Keep(phone, "student-look-again");
        await ask.GetByRole(AriaRole.Button, new() { Name = "It is right" }).ClickAsync();
        await Expect(ask).ToBeHiddenAsync();
        await phone.ReloadAsync();
        await Expect(ask).ToBeHiddenAsync();
        await phone.Open("sent");
        await Expect(phone.Locator("#sent")).ToContainTextAsync("82.34");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_reading_while_the_countdown_runs_is_asked_about_once_and_a_wrong_flame_out_is_taken_back()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 4);
        await phone.WeighAndLight();
        string heating = await phone.Stage().Locator("h1").InnerTextAsync();
        ILocator flameOut = phone.FlameOut();
        ILocator still = phone.Stage().GetByRole(AriaRole.Button, new() { Name = "We are still heating" });
        // With a connection, without one, and where the connection went after the program had gone on to the cooling.
        await flameOut.ClickAsync();
        await Expect(phone.Locator("#live .place").First).ToHaveAttributeAsync("data-step", "cool");
        await still.ClickAsync();
        await Expect(phone.Stage().Locator("h1")).ToHaveTextAsync(heating);
        await phone.Context.SetOfflineAsync(true);
        await flameOut.ClickAsync();
        await still.ClickAsync();
        await Expect(phone.Stage().Locator("h1")).ToHaveTextAsync(heating);
        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await flameOut.ClickAsync();
        await Expect(phone.Locator("#live .place").First).ToHaveAttributeAsync("data-step", "cool");
        await phone.Context.SetOfflineAsync(true);
        await still.ClickAsync();
        await Expect(phone.Stage().Locator("h1")).ToHaveTextAsync("The heating goes on");
        await flameOut.ClickAsync();

        await phone.GoOnToReading();
        await phone.Type("28.48");
        await Expect(phone.Locator(".doubt")).ToContainTextAsync("The countdown still runs: it may still be hot.");
        await Pictures.Keep(phone, "student-still-hot");
        await phone.Locator(".doubt").GetByRole(AriaRole.Button, new() { Name = "Wait for the countdown" }).ClickAsync();
        await Expect(phone.Stage().Locator(".figure")).ToHaveValueAsync("28.48");
        await phone.Stage().Locator("form[data-typing] > button.tall").ClickAsync();
        await phone.Context.SetOfflineAsync(false);
        await phone.Open("sent");
        await Expect(phone.Locator("#sent .value").Nth(2)).ToHaveTextAsync("28.48");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task After_the_flame_is_out_the_page_counts_down_to_cool_enough_to_weigh()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 4);
        await phone.WeighAndLight();
        await phone.FlameOut().ClickAsync();
        await Expect(phone.Stage()).ToContainTextAsync(new Regex("[0-9]+:[0-9]{2}"));
        // It is there with the words, and not half a second after them.
        Assert.Matches("in [0-9]+:[0-9]{2}", (await phone.Stage().TextContentAsync())!);
        await Expect(phone.Locator("body")).ToContainTextAsync(new Regex("[Tt]ongs"));
        await Pictures.Keep(phone, "student-cooling");
        lab.NothingAmiss();
    }
}
