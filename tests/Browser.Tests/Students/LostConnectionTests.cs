using Calx.Records.Journal;
using Calx.Records.Storage;

namespace Calx.Browser.Tests.Students;

/// <summary>A phone loses its connection: what was typed waits on it, survives a reload, and arrives once.</summary>
public sealed class LostConnectionTests(Chromium chromium)
{
    private static readonly string[] Three = ["28.10", "28.34", "28.49"];

    [Fact]
    public async Task What_is_typed_offline_waits_on_the_phone_and_arrives_once_when_the_connection_returns()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        await phone.Context.SetOfflineAsync(true);
        await phone.Type(Three[0]);
        await Expect(phone.Locator("[data-line]")).ToContainTextAsync("to be sent");
        Assert.True(await phone.Waiting() >= 1);
        await Pictures.Keep(phone, "student-offline");

        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        Assert.Equal(0, await phone.Waiting());
        Assert.Equal(["28.10"], await ReadingsIn(lab));
        lab.NothingAmiss();
    }

    [Fact]
    public async Task Three_readings_typed_while_the_program_is_gone_survive_a_reload_and_arrive_once_when_it_is_back()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        await lab.Program.Kill();
        foreach (string written in Three)
        {
            await phone.GoOnToReading();
            await phone.TypeWarmOrCool(written);
        }

        await Expect(phone.Locator("[data-line]")).ToContainTextAsync("to be sent");
        int waiting = await phone.Waiting();
        Assert.True(waiting >= 3);
        await Assert.ThrowsAsync<PlaywrightException>(() => phone.ReloadAsync());

        await lab.Program.StartAgain();
        await phone.GotoAsync("/table");
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        Assert.Equal(0, await phone.Waiting());
        Assert.Equal(Three, await ReadingsIn(lab));
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_lost_answer_doubles_nothing()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        int lost = 0;
        await phone.RouteAsync("**/table/entries", async route =>
        {
            if (lost++ < 2)
            {
                // The program takes it, and the phone never hears so.
                await route.FetchAsync();
                await route.AbortAsync("connectionreset");
            }
            else
            {
                await route.ContinueAsync();
            }
        });
        await phone.Type(Three[0]);
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        Assert.True(lost >= 3);
        Assert.Equal(["28.10"], await ReadingsIn(lab));
        lab.NothingAmiss();
    }

    [Fact]
    public async Task Two_tabs_of_one_phone_send_what_waits_once()
    {
        await using Lab lab = await Lab.Open(chromium);
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        await phone.Context.SetOfflineAsync(true);
        await phone.Type(Three[0]);
        Assert.True(await phone.Waiting() >= 1);
        await phone.Context.SetOfflineAsync(false);
        IPage tab = await phone.Context.NewPageAsync();
        await tab.GotoAsync("/table");
        await Expect(tab.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
        Assert.Equal(["28.10"], await ReadingsIn(lab));
        lab.NothingAmiss();
    }

    private static async Task<string[]> ReadingsIn(Lab lab)
    {
        await using RecordStore store = await RehearsedLesson.Open(lab.DataFolder);
        IReadOnlyList<KeptEntry> entries = await store.Entries(lab.Lesson.Id);
        return [.. entries.Select(e => e.Entry.Content).OfType<EntryContent.Reading>().Select(r => r.Written.ToString())];
    }
}
