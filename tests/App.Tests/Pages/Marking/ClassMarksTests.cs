using System.Net;
using AngleSharp.Dom;
using Calx.App.Serving;
using Calx.App.Tests.Pages.Students;
using Calx.App.Tests.Pages.Teachers;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Marking;

/// <summary>The class view of marking, what stays closed until it is asked for, and files.</summary>
public sealed class ClassMarksTests
{
    private static readonly string[] Names = ["Ada", "Bo", "Cleo"];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Before_any_answer_the_page_says_what_to_do_and_the_lessons_page_leads_to_it()
    {
        await using MarkingScreen screen = await MarkingScreen.Start();
        Assert.Contains("Nobody has handed anything in yet", (await screen.Page()).Body!.TextContent, StringComparison.Ordinal);
        await screen.Class.Taught.Teacher(App.Live.Acts.Began);
        Assert.NotNull((await screen.Page($"/lessons/{screen.Class.Taught.Lesson.Id}")).QuerySelector($"a[href='{screen.Address}']"));
        await screen.Class.Taught.Teacher(App.Live.Acts.Ended);
        Assert.NotNull((await screen.Page($"/lessons/{screen.Class.Taught.Lesson.Id}")).QuerySelector($"a[href='{screen.Address}']"));
    }

    [Fact]
    public async Task The_class_view_says_how_each_answer_went()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page();
        string[] mass = [.. page.QuerySelectorAll("table.went tbody tr").First(r => r.TextContent.Contains("mass of magnesium", StringComparison.Ordinal)).QuerySelectorAll("td").Select(c => c.TextContent)];
        Assert.Equal(["3", "2", "0", "0"], mass);
        Assert.Contains("3 students of 3 handed something in. 3 answers in words wait for you.", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("the mass of the vessel was not taken away", page.Body.TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.QuerySelectorAll(".groupings .question"));
    }

    [Fact]
    public async Task Answers_that_could_not_be_read_are_counted_beside_those_in_words_and_lead_to_the_student()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        await screen.Class.Answer(2, "massOxygen", "quite a lot", null);
        IDocument page = await screen.Page();

        Assert.Contains("3 answers in words wait for you. One other answer could not be read or marked: please look at it.", page.QuerySelector(".big")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Students’ marks: 1 to look at", page.QuerySelector("nav.tabs")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["1", "1"], page.QuerySelectorAll("table.went tbody tr").First(r => r.TextContent.Contains("mass of oxygen", StringComparison.Ordinal)).QuerySelectorAll("td").Select(c => c.TextContent).Where((_, i) => i is 1 or 3));

        IDocument students = await screen.Page("/students");
        IElement link = Assert.Single(students.QuerySelectorAll("h2#look + ul a"));
        Assert.Contains("quite a lot", link.ParentElement!.TextContent, StringComparison.Ordinal);
        string[] parts = link.GetAttribute("href")!.Split('#');
        Assert.NotNull((await screen.Page(parts[0])).GetElementById(parts[1]));
    }

    [Fact]
    public async Task No_student_is_named_on_the_class_view_until_that_is_asked_for()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        string closed = (await screen.Page()).Body!.TextContent;
        Assert.All(Names, name => Assert.DoesNotContain(name, closed, StringComparison.Ordinal));
        IDocument open = await screen.Page("?names=yes");
        Assert.All(Names, name => Assert.Contains(name, open.QuerySelector(".groupings")!.TextContent, StringComparison.Ordinal));
        // Answers in words are marked without knowing whose they are, unless that is opened.
        IDocument words = await screen.Page("/words");
        Assert.DoesNotContain("Ada", words.QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Ada", words.QuerySelector("details.whose:not([open]) a")!.TextContent);
    }

    [Fact]
    public async Task Marks_stand_on_no_page_of_students_or_the_projector()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        await screen.Class.Mark(2, "massMagnesium", 1, "a reason of the teacher's");
        string projector = (await screen.Page($"/lessons/{screen.Class.Taught.Lesson.Id}/projector")).DocumentElement.OuterHtml;
        Device phone = await screen.Class.Taught.Device(group: 1);
        string table = await phone.Browser.GetStringAsync("/table", Cancel);
        foreach (string page in (string[])[projector, table])
        {
            Assert.DoesNotContain("a reason of the teacher", page, StringComparison.Ordinal);
            Assert.DoesNotContain("/marking", page, StringComparison.Ordinal);
            Assert.DoesNotContain("24.55 g", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_looks_adjusted_comes_on_demand_and_as_a_question()
    {
        await using MarkingScreen screen = await MarkingScreen.Start();
        // 0.27 g of magnesium takes up 0.178 g of oxygen (0.27 x 16.00 / 24.31), and the own readings of group 2 give 0.10 g.
        await screen.Class.Answer(3, "massMagnesium", "0.27 g");
        await screen.Class.Answer(3, "massOxygen", "0.178 g");
        IDocument look = await screen.Page("/look");
        string text = look.QuerySelector("main")!.TextContent;
        Assert.Contains("Cleo", text, StringComparison.Ordinal);
        Assert.Contains("?", text, StringComparison.Ordinal);
        Assert.Contains("no more than that", text, StringComparison.Ordinal);
        Assert.DoesNotContain("textbook would give", (await screen.Page()).Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("textbook would give", (await screen.Page("/students/3")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_marks_are_given_as_a_file_that_no_spreadsheet_takes_for_formulas()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        await screen.Class.Taught.Host.Store.PutMember(new Records.Lessons.Member(screen.Class.Taught.Lesson.ClassId, 2, "=1+1"), "teacher", Cancel);
        HttpResponseMessage answer = await screen.Class.Teacher.GetAsync($"{screen.Address}/files/marks.csv", Cancel);
        Assert.Equal("9F-2026-11-26-magnesium-oxide-marks.csv", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
        string[] lines = (await answer.Content.ReadAsStringAsync(Cancel)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("student,massMagnesium,massOxygen,molesMagnesium,molesOxygen,ratio", lines[0], StringComparison.Ordinal);
        Assert.Equal(4, lines.Length);
        Assert.StartsWith("Ada,1,1,1,1,1", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("'=1+1,0,", lines[2], StringComparison.Ordinal);
        using var slips = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(await screen.Class.Teacher.GetStringAsync($"{screen.Address}/files/feedback-slips.html", Cancel));
        Assert.Equal(3, slips.QuerySelectorAll(".cut").Length);
        Assert.Contains("=1+1", slips.QuerySelectorAll(".cut")[1].TextContent, StringComparison.Ordinal);
        foreach ((string file, string part, string said) in ((string, string, string)[])
        [
            ("marks.xlsx", "xl/worksheets/sheet1.xml", "26 November 2026"), ("feedback-slips.docx", "word/document.xml", "=1+1"), ("roster.zip", "results.csv", ",'=1+1"),
        ])
        {
            using var archive = new System.IO.Compression.ZipArchive(await screen.Class.Teacher.GetStreamAsync($"{screen.Address}/files/{file}", Cancel));
            using var reader = new StreamReader(archive.GetEntry(part)!.Open());
            Assert.Contains(said, await reader.ReadToEndAsync(Cancel), StringComparison.Ordinal);
        }

        Assert.Equal(HttpStatusCode.NotFound, (await screen.Class.Teacher.GetAsync($"{screen.Address}/files/marks.exe", Cancel)).StatusCode);
    }

    [Fact]
    public async Task Forgotten_names_are_on_no_page_of_marking_and_in_no_file()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        await screen.Page("/students");
        await screen.Class.Taught.Host.Store.ForgetNames(screen.Class.Taught.Lesson.ClassId, "teacher", Cancel);
        foreach (string place in (string[])["", "?names=yes", "/students", "/students/1", "/words", "/look", "/settings"])
        {
            string page = (await screen.Page(place)).DocumentElement.OuterHtml;
            Assert.All(Names, name => Assert.DoesNotContain(name, page, StringComparison.Ordinal));
        }

        string csv = await screen.Class.Teacher.GetStringAsync($"{screen.Address}/files/marks.csv", Cancel);
        Assert.All(Names, name => Assert.DoesNotContain(name, csv, StringComparison.Ordinal));
        Assert.Contains("no. 2", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_address_of_marking_is_the_teachers_alone()
    {
        await using MarkingScreen screen = await MarkingScreen.Start();
        RouteEndpoint[] all = [.. screen.Class.Taught.Host.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.RoutePattern.RawText!.Contains("/marking", StringComparison.Ordinal))];
        Assert.True(all.Length > 10, "The addresses were not found.");
        Assert.All(all, e => Assert.Same(Admits.Teacher, e.Metadata.GetMetadata<Admits>()));
        Assert.Equal(HttpStatusCode.NotFound, (await screen.Class.Teacher.GetAsync("/lessons/nowhere/marking", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_lesson_without_members_has_nobody_to_be_marked()
    {
        await using Taught taught = await Taught.Start();
        using HttpClient browser = taught.Host.Browser();
        foreach (string place in (string[])["", "/students", "/words", "/look", "/settings", "/comments", "/files/marks.csv"])
        {
            HttpResponseMessage answer = await browser.GetAsync($"/lessons/{taught.Lesson.Id}/marking{place}", Cancel);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }

        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/lessons/{taught.Lesson.Id}/marking/students/1", Cancel)).StatusCode);
    }
}
