namespace Calx.Browser.Tests.Students;

/// <summary>One laptop beside a balance takes the readings of every group.</summary>
public sealed class StationTests(Chromium chromium)
{
    [Fact]
    public async Task A_balance_station_takes_a_reading_of_each_group_and_goes_back_to_the_choice()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage station = await lab.Station();
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        string[] typed = ["28.10", "31.42", "26.05"];
        for (int group = 1; group <= typed.Length; group++)
        {
            await Expect(station.Locator(".chooser")).ToBeVisibleAsync();
            if (group == 1)
            {
                await Pictures.Keep(station, "station-choice");
            }

            await station.Locator($"[data-choose='{group}']").ClickAsync();
            await station.Type(typed[group - 1], balance: "B");
            await Expect(teacher.Locator($"article[aria-labelledby=t{group}]")).ToContainTextAsync(typed[group - 1]);
        }

        await station.Locator("[data-choose='2']").ClickAsync();
        await Expect(station.Stage()).ToBeVisibleAsync();
        await Pictures.Keep(station, "station-reading");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_hardware_keyboard_types_at_the_station()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        IPage station = await lab.Station();
        await station.Locator("[data-choose='2']").ClickAsync();
        await station.Stage().Locator(".letters label:has(input[value='A'])").ClickAsync();
        await station.Keyboard.TypeAsync("27.33");
        await station.Keyboard.PressAsync("Enter");
        await Expect(station.Locator(".chooser")).ToBeVisibleAsync();
        await Expect(station.Locator("[data-way][data-group='2'] .value")).ToContainTextAsync("27.33");
        lab.NothingAmiss();
    }
}
