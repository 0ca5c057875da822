using AngleSharp.Dom;
using Calx.Records.Lessons;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>Classes and their members.</summary>
public sealed class ClassesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Names_are_pasted_one_a_line_and_numbered_on_from_those_that_are_there()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass("9F", "Ada", "  Ben \t K ", "", "Cleo\r");
        await screen.Send($"{one}/members", ("names", "Dan"));
        SchoolClass kept = Assert.Single(await screen.Host.Store.Classes(Cancel));
        IReadOnlyList<Member> members = await screen.Host.Store.Members(kept.Id, Cancel);
        Assert.Equal([(1, "Ada"), (2, "Ben K"), (3, "Cleo"), (4, "Dan")], members.Select(m => (m.Number, m.Name)));
    }

    [Fact]
    public async Task A_class_can_have_numbers_without_names()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass();
        IDocument page = await screen.After($"{one}/members", ("names", ""), ("count", "24"));
        Assert.Equal(24, page.QuerySelectorAll(".members li").Length);
    }

    [Theory]
    [InlineData("", "no name in it")]
    [InlineData("12345678901234567890123456789012345678901", "Line 1")]
    public async Task What_is_no_list_of_names_is_told_and_adds_nobody(string names, string expected)
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass();
        IDocument page = await screen.After($"{one}/members", ("names", names));
        Assert.Contains(expected, TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll(".members li"));
    }

    [Fact]
    public async Task More_members_than_a_class_has_are_not_taken()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass();
        IDocument page = await screen.After($"{one}/members", ("names", string.Join('\n', Enumerable.Repeat("A", 100))));
        Assert.Contains("at most 99", TeachersScreen.Faults(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_of_the_same_name_are_told()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page(await screen.NewClass("9F", "Sam", "Kit", "sam"));
        Assert.Contains("Sam", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.DoesNotContain("Kit", TeachersScreen.Faults(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_of_markup_stays_text_everywhere()
    {
        const string Hostile = "<img src=x onerror=1>";
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass(Hostile, Hostile, "\"><script>");
        string lesson = await screen.NewLesson(name: Hostile);
        foreach (string address in (string[])[one, $"{one}/forget", "/classes", lesson, "/", "/lessons", $"{lesson}/delete", $"{lesson}/findings", "/lessons/new?practical=magnesium-oxide", "/records/audit"])
        {
            IDocument page = await screen.Page(address);
            Assert.Empty(page.QuerySelectorAll("img, script:not([src])"));
        }

        Assert.Equal(Hostile, (await screen.Page(one)).QuerySelector("#m1")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_name_is_changed_and_a_field_that_was_not_sent_is_left_alone()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass("9F", "Ada", "Ben");
        IDocument page = await screen.After($"{one}/members/names", ("m.1", "Ada L"));
        Assert.Equal(["Ada L", "Ben"], page.QuerySelectorAll(".members input").Select(i => i.GetAttribute("value")));
    }

    [Fact]
    public async Task The_same_class_is_not_added_twice()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass();
        IDocument page = await screen.After("/classes", ("year", "2026/27"), ("name", "9F"));
        Assert.NotEmpty(TeachersScreen.Faults(page));
        Assert.Single(await screen.Host.Store.Classes(Cancel));
    }

    [Fact]
    public async Task Names_are_forgotten_only_where_the_class_was_typed_and_after_an_export()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass("9F", "Ada", "Ben");
        IDocument asked = await screen.After($"{one}/forget", ("typed", "9f"));
        Assert.Contains("Type 9F", TeachersScreen.Faults(asked), StringComparison.Ordinal);
        Assert.Equal("Ada", (await screen.Page(one)).QuerySelector("#m1")!.GetAttribute("value"));

        IDocument done = await screen.After($"{one}/forget", ("typed", "9F"));
        Assert.Equal(["", ""], done.QuerySelectorAll(".members input").Select(i => i.GetAttribute("value")));
        string export = Assert.Single(Directory.GetFiles(Path.Combine(screen.Host.DataFolder, "exports"), "*.zip"));
        Assert.Contains("Ada", await Zips.Text(export, "records.json"), StringComparison.Ordinal);
        Assert.Contains(export, done.QuerySelector(".done")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Ada", (await screen.Page("/records/audit")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_there_is_said_so()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        foreach (string address in (string[])["/classes/000000000000", "/classes/nonsense", "/lessons/zzzzzzzzzzzz", "/balances/%20", "/practicals/no-such", "/practicals/no-such/history"])
        {
            HttpResponseMessage answer = await screen.Browser.GetAsync(address, Cancel);
            Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
            Assert.Contains("at this address", (await TeachersScreen.Parsed(answer)).Body!.TextContent, StringComparison.Ordinal);
        }
    }
}
