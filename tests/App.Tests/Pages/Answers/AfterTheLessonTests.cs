using System.Globalization;
using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>Answers after the lesson: its end closes them unless the teacher leaves them open, with a code of their own.</summary>
public sealed class AfterTheLessonTests
{
    [Fact]
    public async Task The_end_of_the_lesson_closes_answers_and_what_waited_on_a_device_is_taken()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await End(lesson);
        var results = await device.Tell(
            AnsweringClass.Answer("massMagnesium", "0.24").With("typedAt", At(TimeSpan.FromMinutes(-3))),
            AnsweringClass.Answer("massOxygen", "0.14").With("typedAt", At(TimeSpan.FromSeconds(3))));
        Assert.Equal(["added", "refused"], results.Select(r => r.Result));
        Assert.StartsWith("Your teacher ended this lesson at ", results[1].Reason, StringComparison.Ordinal);
        Assert.EndsWith("Tell your teacher, who can open answers again.", results[1].Reason, StringComparison.Ordinal);
        IDocument page = await device.Page("/answers?q=massMagnesium");
        Assert.Empty(page.QuerySelectorAll("form[data-answer]"));
        Assert.Contains("0.24", page.QuerySelector(".question.current")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Left_open_they_are_taken_after_the_end_and_readings_are_not()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await Press(lesson, "answers", "Leave them open after the lesson");
        await End(lesson);
        Assert.Equal("added", (await device.Tell(Later(AnsweringClass.Answer("massOxygen", "0.14")))).Single().Result);
        Assert.Equal("refused", (await device.Tell(Later(Entries.Reading("after2", "23.50")))).Single().Result);
        await Press(lesson, "answers", "Close answers");
        Assert.StartsWith(
            "Your teacher closed the answers at ", (await device.Tell(Later(AnsweringClass.Answer("massOxygen", "0.15")))).Single().Reason, StringComparison.Ordinal);
        Assert.Equal("0.14", (await lesson.Counts("massOxygen"))!.Text);
    }

    [Fact]
    public async Task A_code_for_after_the_lesson_lets_devices_in_to_answer_and_for_nothing_else()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await End(lesson);
        Device gone = new(lesson.Taught.Host.Browser());
        Assert.Equal(HttpStatusCode.NotFound, (await gone.Send("/join", ("code", lesson.Taught.Door.Code))).StatusCode);
        IDocument page = await Press(lesson, "answers", "Open answers again, with a code");
        string code = page.QuerySelector("#answers .code")!.TextContent;
        Assert.NotEqual(lesson.Taught.Door.Code, code.Replace(" ", "", StringComparison.Ordinal));

        Device device = new(lesson.Taught.Host.Browser());
        Assert.Equal("/groups", (await device.Send("/join", ("code", code))).Headers.Location!.ToString());
        Assert.Equal("/answers", (await device.Get("/groups")).Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.Conflict, (await device.Send("/groups", ("group", "1"))).StatusCode);
        Assert.Equal(["Group 1", "Group 2", "In no group yet"], (await device.Page("/answers")).QuerySelectorAll("h2").Select(h => h.TextContent));
        await device.Send("/answers/who", ("member", "3"));
        await device.Send(AnsweringClass.Form(await device.Page("/answers"), "massMagnesium"), ("text", "0.24"), ("unit", "g"));
        Assert.Equal("0.24", (await lesson.Counts("massMagnesium", 3))!.Text);
        // A reading is not for such a device.
        HttpResponseMessage reading = await device.Browser.PostAsync(
            "/answers/entries",
            new StringContent("""{"entries":[{"id":"0123456789abcdef0123456789abcdef","kind":"reading","what":"empty","group":1,"written":"1.00"}]}""", System.Text.Encoding.UTF8, "application/json"),
            TestContext.Current.CancellationToken);
        Assert.Contains("refused", await Device.Text(reading), StringComparison.Ordinal);

        // The teacher's work on the lesson leaves the door as it is; closing answers closes it.
        await new Device(lesson.Taught.Host.Browser()).Send(
            $"{lesson.Address}/write", ("id", Entries.Id()), ("kind", "reading"), ("group", "2"), ("trial", "1"), ("what", "empty"), ("written", "23.11"), ("back", lesson.Address));
        Assert.Equal(HttpStatusCode.Redirect, (await new Device(lesson.Taught.Host.Browser()).Send("/join", ("code", code))).StatusCode);
        await Press(lesson, "answers", "Close answers");
        Assert.Equal(HttpStatusCode.NotFound, (await new Device(lesson.Taught.Host.Browser()).Send("/join", ("code", code))).StatusCode);
    }

    [Fact]
    public async Task Once_the_marks_are_open_nothing_is_taken_whatever_its_time()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await (await lesson.Taught.Room()).Append(MarkingSettings.OpeningEntry(Entries.NewId(), opens: true, DateTimeOffset.UtcNow), TestContext.Current.CancellationToken);
        var result = (await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24").With("typedAt", At(TimeSpan.FromHours(-1))))).Single();
        Assert.Equal(
            "Your teacher has opened the marks, so answers are closed; what is typed after that is not taken. Tell your teacher, who can open answers again.", result.Reason);
    }

    [Fact]
    public async Task The_teacher_sees_how_many_have_answered_and_no_names()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Asked = ["massMagnesium"] });
        await (await lesson.Answering(1, 1)).Tell(AnsweringClass.Answer("massMagnesium", "0.24"));
        string live = (await new Device(lesson.Taught.Host.Browser()).Page($"{lesson.Address}/live")).QuerySelector(".livehead")!.TextContent;
        Assert.Contains("1 student has begun to answer, 1 has answered everything.", live, StringComparison.Ordinal);
        Assert.DoesNotContain("Amir", live, StringComparison.Ordinal);
    }

    private static async Task End(AnsweringClass lesson) => await new Device(lesson.Taught.Host.Browser()).Send($"{lesson.Address}/end");

    /// <summary>Presses a button of a part of the lesson's page, and shows the page that follows.</summary>
    private static async Task<IDocument> Press(AnsweringClass lesson, string part, string words)
    {
        var teacher = new Device(lesson.Taught.Host.Browser());
        IElement button = (await teacher.Page(lesson.Address)).QuerySelectorAll($"#{part} button").Single(b => b.TextContent == words);
        await teacher.Send(button.Closest("form")!, (button.GetAttribute("name")!, button.GetAttribute("value")!));
        return await teacher.Page(lesson.Address);
    }

    private static System.Text.Json.Nodes.JsonObject Later(System.Text.Json.Nodes.JsonObject entry) => entry.With("typedAt", At(TimeSpan.FromSeconds(3)));

    private static string At(TimeSpan fromNow) => (DateTimeOffset.UtcNow + fromNow).ToString("O", CultureInfo.InvariantCulture);
}
