using System.Net;
using AngleSharp.Dom;

namespace Calx.App.Tests.Pages.Students;

/// <summary>Nothing of a practical is shown to students before the teacher has signed for it.</summary>
public sealed class SafetyTests
{
    private const string Sentence = "Your teacher has not opened this practical yet.";

    [Fact]
    public async Task Before_the_safety_check_is_signed_students_see_no_group_and_no_step()
    {
        await using Taught lesson = await Taught.Start(signed: false);
        Device device = await lesson.Device();
        IDocument groups = await device.Page("/groups");
        Assert.Contains(Sentence, groups.Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(groups.QuerySelectorAll("button[name=group]"));
        Assert.Equal(HttpStatusCode.Conflict, (await device.Send("/groups", ("group", "1"))).StatusCode);
    }

    [Fact]
    public async Task A_station_waits_too_and_takes_no_reading()
    {
        await using Taught lesson = await Taught.Start(signed: false);
        Device station = await lesson.Device(isStation: true);
        HttpResponseMessage page = await station.Get("/table");
        Assert.Equal(HttpStatusCode.Forbidden, page.StatusCode);
        string html = await Device.Text(page);
        Assert.Contains(Sentence, html, StringComparison.Ordinal);
        Assert.DoesNotContain("crucible", html, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await station.Post(Entries.Reading("empty", "23.11").With("group", 1))).StatusCode);
        Assert.Empty(await lesson.Journal());
    }
}
