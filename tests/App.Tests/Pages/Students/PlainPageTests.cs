using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Students;

/// <summary>The page without its script: a reading is taken all the same.</summary>
public sealed class PlainPageTests
{
    [Fact]
    public async Task A_reading_typed_into_the_form_is_kept_and_a_double_click_is_one_entry()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        IElement form = await Form(device);
        Assert.StartsWith("/table", (await device.Send(form, ("written", "23.11"), ("balance", "A"), ("vessel", "4"))).Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("/table", (await device.Send(form, ("written", "23.11"), ("balance", "A"), ("vessel", "4"))).Headers.Location!.ToString(), StringComparison.Ordinal);
        JournalEntry kept = Assert.Single(await lesson.Journal());
        Assert.Equal(new JournalCell(1, 1, "empty"), kept.Cell);
    }

    [Theory]
    [InlineData("A", "15.1", "Your balance shows two decimals: 15.10?", "Yes, 15.10", "15.10")]
    [InlineData("A", "15", "Your balance shows two decimals: 15.00?", "Yes, 15.00", "15.00")]
    [InlineData("C", "15.10", "Your balance shows three decimals: 15.100?", "Yes, 15.100", "15.100")]
    [InlineData("A", "15.104", "Your balance shows two decimals. Look again and type all you see.", "It does show 15.104", "15.104")]
    public async Task Decimals_that_are_not_the_balances_are_asked_about_before_anything_is_kept(
        string balance, string typed, string question, string answer, string kept)
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        IElement form = await Form(device);
        HttpResponseMessage asked = await device.Send(form, ("written", typed), ("balance", balance));
        Assert.Equal(HttpStatusCode.OK, asked.StatusCode);
        IElement doubt = (await Device.Parsed(asked)).QuerySelector(".typed")!;
        Assert.Equal((question, answer), (doubt.QuerySelector("h1")!.TextContent, doubt.QuerySelector("button")!.TextContent));
        Assert.Empty(await lesson.Journal());
        await device.Send(doubt.QuerySelector("form")!);
        Assert.Equal(kept, Assert.IsType<EntryContent.Reading>(Assert.Single(await lesson.Journal()).Content).Written.ToString());
    }

    [Fact]
    public async Task An_assessed_lesson_asks_nothing_about_decimals()
    {
        await using Taught lesson = await Taught.Start(assessed: true);
        Device device = await lesson.Device(1);
        await device.Send(await Form(device), ("written", "15.1"), ("balance", "A"));
        Assert.Equal("15.1", Assert.IsType<EntryContent.Reading>(Assert.Single(await lesson.Journal()).Content).Written.ToString());
    }

    [Fact]
    public async Task A_text_that_is_no_number_is_told_on_the_page()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        HttpResponseMessage answer = await device.Send(await Form(device), ("written", "twelve"), ("balance", "A"));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        IElement fault = (await Device.Parsed(answer)).QuerySelector("[role=alert].fault:not(.hidden)")!;
        Assert.Contains("'twelve' is not a number", fault.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wish_for_a_correction_reaches_the_teacher_as_a_sentence()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"));
        IElement form = (await device.Page()).QuerySelector("#sent .correct form")!;
        HttpResponseMessage asked = await device.Send(form, ("should", "23.71"), ("why", "the paper record says so"));
        Assert.Equal("/table#sent", asked.Headers.Location!.ToString());
        string sentence = Assert.IsType<EntryContent.Happening>((await lesson.Journal())[1].Content).Text;
        Assert.EndsWith("23.11 should be 23.71; the paper record says so.", sentence, StringComparison.Ordinal);
        Assert.Contains(sentence, (await device.Page()).QuerySelector("#sent")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_that_cannot_well_be_is_asked_about_on_the_page_that_follows_and_only_once()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "27.63"));
        HttpResponseMessage sent = await device.Send(await Form(device), ("written", "72.87"), ("balance", "A"));
        string address = sent.Headers.Location!.ToString();
        IElement question = (await device.Page(address)).QuerySelector(".asked")!;
        Assert.Equal("Look again at the display.", question.QuerySelector("h1")!.TextContent);
        Assert.StartsWith("/table", (await device.Send(question.QuerySelectorAll("form")[1], ("written", "27.87"))).Headers.Location!.ToString(), StringComparison.Ordinal);
        IDocument page = await device.Page(address);
        Assert.Null(page.QuerySelector(".asked"));
        Assert.Equal("72.87 (looked at the display again)", page.QuerySelectorAll("#sent .readings li")[1].QuerySelector("s")!.TextContent);
        Assert.Equal("27.87", page.QuerySelectorAll("#sent .readings .value")[1].TextContent);
    }

    [Fact]
    public async Task What_is_right_is_said_to_be_so_and_not_asked_about_again()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1), other = await lesson.Device(2);
        await device.Tell(Entries.Reading("empty", "27.63"));
        string address = (await device.Send(await Form(device), ("written", "72.87"), ("balance", "A"))).Headers.Location!.ToString();
        Assert.Null((await other.Page(address)).QuerySelector(".asked"));
        await device.Send((await device.Page(address)).QuerySelector(".asked form")!);
        Assert.Null((await device.Page(address)).QuerySelector(".asked"));
        Assert.Equal(Acts.LookedAgain, (await lesson.Journal())[^1].Cell.What);
    }

    [Fact]
    public async Task A_reading_while_the_countdown_runs_is_asked_about_before_it_is_kept()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Began);
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"), Entries.Reading("before", "23.35"));
        await device.Tell(Entries.Happening(Acts.FlameOn));
        await device.Tell(Entries.Happening(Acts.FlameOut));
        await device.Tell(Entries.Happening(Acts.AtStep, "weigh-after"));
        HttpResponseMessage asked = await device.Send(await Form(device), ("written", "23.49"), ("balance", "A"));
        IElement hot = (await Device.Parsed(asked)).QuerySelector(".typed")!;
        Assert.Contains("The countdown still runs", hot.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Send 23.49", hot.QuerySelector("button")!.TextContent);
        await device.Send(hot.QuerySelector("form")!);
        Assert.Equal("after", (await lesson.Journal())[^1].Cell.What);
    }

    [Fact]
    public async Task An_observation_is_ticked_and_taken_back()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await device.Send(Tick(await device.Page()));
        Assert.Equal("true", Tick(await device.Page()).QuerySelector("button")!.GetAttribute("aria-pressed"));
        await device.Send(Tick(await device.Page()));
        Assert.Equal("false", Tick(await device.Page()).QuerySelector("button")!.GetAttribute("aria-pressed"));
        Assert.Equal(2, (await lesson.Journal()).Count);

        static IElement Tick(IDocument page) => page.QuerySelector("#seen form[data-what=smoke-seen]")!;
    }

    private static async Task<IElement> Form(Device device) => (await device.Page()).QuerySelector("#now > .place form.typing")!;
}
