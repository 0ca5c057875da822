using AngleSharp.Dom;
using Calx.App.Pages.Practicals;
using Calx.Practicals.Definition;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>A practical with its plan.</summary>
public sealed class PlanPageTests
{
    private const string Magnesium = "/practicals/magnesium-oxide";

    private static readonly (string Query, string Field, string Expected)[] Faulty =
    [
        ("groups=0", "groups", "whole number from 1 to 60"),
        ("groups=2.5", "groups", "whole number"),
        ("mass=0,2", "mass", "full stop"),
        ("mass=9", "mass", "more than a class may use"),
        ("minutes=NaN", "minutes", "minutes from 1 to 600"),
        ("minutes=1e400", "minutes", "minutes from 1 to 600"),
        ("resolution=0,01", "resolution", "full stop"),
        ("resolution=0.03", "resolution", "1, 2 or 5 times a power of ten"),
        ("students=3&groups=6", "students", "do not make 6 groups"),
        ("stagger=90&minutes=60", "stagger", "after the bell"),
        ("time.cool=9+3", "time.cool", "least, likely and most"),
        ("kit.burner=x", "kit.burner", "whole number from 1 to 1000"),
        ("price.crucible=-1", "price.crucible", "a price"),
    ];

    [Fact]
    public async Task Every_practical_stands_in_the_list_with_its_question_and_is_not_yet_checked()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page("/practicals");
        foreach (Practical practical in BuiltInPracticals.All)
        {
            IElement item = page.QuerySelector($"a[href='/practicals/{practical.Id}']")!.Closest("li")!;
            Assert.Contains(practical.Question, item.TextContent, StringComparison.Ordinal);
            Assert.Contains("not yet checked", item.TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_list_is_narrowed_by_a_plain_form_that_keeps_what_was_asked_for()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page("/practicals?happens=same&noflame=yes&about=vessel");
        Assert.Equal(["/practicals/tablet-in-water"], page.QuerySelectorAll(".shelf h2 a").Select(a => a.GetAttribute("href")));
        Assert.Contains("1 of ", page.QuerySelector(".found")!.TextContent, StringComparison.Ordinal);
        IElement form = page.QuerySelector("form[data-shelf][method=get][action='/practicals']")!;
        Assert.Equal("same", form.QuerySelector("option[selected]")!.GetAttribute("value"));
        Assert.NotNull(form.QuerySelector("[name=noflame][checked]"));
        Assert.NotNull(form.QuerySelector("details[open]"));
        Assert.Equal("vessel", form.QuerySelector("[name=about]")!.GetAttribute("value"));
        Assert.Contains("nothing changes", page.QuerySelector(".needs")!.TextContent, StringComparison.Ordinal);

        IDocument wrong = await screen.Page("/practicals?minutes=1h");
        Assert.Contains("'1h' is not taken", wrong.QuerySelector("#minutes-fault")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(BuiltInPracticals.All.Count, wrong.QuerySelectorAll(".shelf h2 a").Length);
        Assert.Contains("None of the ", (await screen.Page("/practicals?happens=loses&noflame=yes")).QuerySelector(".found")!.TextContent, StringComparison.Ordinal);
    }

    // The file says that it is a demonstration: common practice, no source.
    [Fact]
    public async Task A_demonstration_starts_from_one_group_and_takes_no_more()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page("/practicals/zinc-chloride?minutes=200");
        Assert.Contains("a demonstration, 2 students, 200 min", page.QuerySelector(".planned")!.TextContent, StringComparison.Ordinal);
        IDocument refused = await screen.Page("/practicals/zinc-chloride?minutes=200&groups=2");
        Assert.Null(refused.QuerySelector(".verdict"));
        Assert.Contains("2 groups are more than may do it side by side: 1 at most", refused.QuerySelector("#f-groups")!.Closest(".field")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_figures_are_those_of_the_form_and_the_form_keeps_what_was_typed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page($"{Magnesium}?groups=6&minutes=100&mass=0.2&prepared=yes&resolution=0.001");
        string planned = page.QuerySelector(".planned")!.TextContent;
        Assert.Contains("6 groups, 12 students, 100 min", planned, StringComparison.Ordinal);
        Assert.Contains("2 balances of 0.001 g", planned, StringComparison.Ordinal);
        Assert.Contains("samples of 0.2 g", planned, StringComparison.Ordinal);
        Assert.Contains("prepared by a technician", planned, StringComparison.Ordinal);
        Assert.Equal("6", page.QuerySelector("#f-groups")!.GetAttribute("value"));
        Assert.True(page.QuerySelector("input[name=prepared]")!.HasAttribute("checked"));
        Assert.NotNull(page.QuerySelector(".verdict"));
    }

    [Fact]
    public async Task The_part_that_the_script_fetches_is_the_part_of_the_page()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        const string Query = "?groups=4&minutes=200";
        string whole = (await screen.Page(Magnesium + Query)).QuerySelector("#figures")!.TextContent;
        string part = (await screen.Page($"{Magnesium}/figures{Query}")).Body!.TextContent;
        Assert.Equal(Words(whole), Words(part));
    }

    [Fact]
    public async Task A_fault_stands_as_a_sentence_at_its_field_and_nothing_is_worked_out()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        foreach ((string query, string field, string expected) in Faulty)
        {
            IDocument page = await screen.Page($"{Magnesium}?{query}");
            Assert.Contains(expected, page.QuerySelector($"[data-fault='{field}']")!.TextContent, StringComparison.Ordinal);
            Assert.Equal("true", page.QuerySelector($"input[name='{field}']")!.GetAttribute("aria-invalid"));
            Assert.Contains(expected, page.QuerySelector(".form-faults")!.TextContent, StringComparison.Ordinal);
            Assert.Null(page.QuerySelector(".verdict"));
            Assert.DoesNotContain("--", page.QuerySelector(".form-faults")!.TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_word_that_the_practical_does_not_know_is_a_fault_too()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page($"{Magnesium}?without=<b>x</b>&want=nothing&move=nowhere");
        Assert.Equal(3, page.QuerySelectorAll(".form-faults li").Length);
        Assert.Empty(page.QuerySelectorAll(".form-faults b"));
    }

    [Fact]
    public async Task A_lesson_that_does_not_fit_offers_ways_each_of_which_fills_in_the_form()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page($"{Magnesium}?groups=2&minutes=90&ways=yes");
        IElement[] ways = [.. page.QuerySelectorAll("#ways li a")];
        Assert.NotEmpty(ways);
        IDocument taken = await screen.Page(ways[0].GetAttribute("href")!);
        Assert.Empty(taken.QuerySelectorAll(".form-faults"));
        Assert.DoesNotContain("does-not-fit", taken.QuerySelector(".verdict")!.ClassName!, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_of_a_plan_come_back_from_their_address()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        const string Query = "?groups=5&students=11&balances=2&resolution=0.01%200.001&minutes=75&mass=0.21&trials=2&heatings=3&prepared=yes&stagger=5"
            + "&condition=careful&time.cool=10%2012%2020&kit.burner=4&price.crucible=2.4&metre=1.1";
        PlanForm form = PlanForm.Of(practical, Query);
        PlanForm again = PlanForm.Of(practical, PlanQuery.Of(form.Words));
        Assert.Equal(PlanQuery.Of(form.Words), PlanQuery.Of(again.Words));
        Assert.Equal((5, 11, 2, 3, 5.0, 0.21), (again.Words.Groups, again.Words.Students!.Value, again.Words.Trials, again.Words.Heatings!.Value, again.Words.Stagger, again.Words.Mass!.Value));
        Assert.Equal(["0.01", "0.001"], again.Words.Resolutions);
        Assert.Equal(["cool=10,12,20"], again.Words.Times);
        Assert.Equal(["burner=4"], again.Words.Kit);
    }

    [Fact]
    public async Task The_plan_to_print_is_one_file_whose_policy_allows_its_own_style_and_no_script()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        HttpResponseMessage answer = await screen.Browser.GetAsync($"{Magnesium}/print?groups=4&minutes=200", TestContext.Current.CancellationToken);
        string policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("style-src 'sha256-", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script", policy, StringComparison.Ordinal);
        IDocument page = await TeachersScreen.Parsed(answer);
        Assert.Empty(page.QuerySelectorAll("script, link, [style], [src]"));
        Assert.Single(page.QuerySelectorAll("style"));
    }

    [Fact]
    public async Task A_file_of_ones_own_is_on_the_shelf_and_a_broken_one_says_what_is_wrong()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string folder = Directory.CreateDirectory(Path.Combine(screen.Host.DataFolder, "practicals")).FullName;
        string source = BuiltInPracticals.Find("magnesium-oxide")!.SourceText;
        await File.WriteAllTextAsync(Path.Combine(folder, "own.yaml"), source.Replace("practical: magnesium-oxide", "practical: our-magnesium", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(Path.Combine(folder, "broken.yaml"), "practical: [", TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(Path.Combine(folder, "same.yaml"), source, TestContext.Current.CancellationToken);
        IDocument page = await screen.Page("/practicals");
        Assert.NotNull(page.QuerySelector("a[href='/practicals/our-magnesium']"));
        string text = page.Body!.TextContent;
        Assert.Contains("broken.yaml", text, StringComparison.Ordinal);
        Assert.Contains("broken.yaml:", text, StringComparison.Ordinal);
        Assert.Contains("brings along a practical 'magnesium-oxide' already", text, StringComparison.Ordinal);
        Assert.Equal("Burning magnesium in a crucible", (await screen.Page("/practicals/our-magnesium?groups=1&minutes=300")).QuerySelector("h1")!.TextContent);
    }

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public async Task What_a_step_of_the_plan_brings_about_is_ticked_and_the_sentence_names_the_step()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page(Magnesium);
        IElement fired = Condition(page, "fired"), careful = Condition(page, "careful");
        Assert.True(fired.HasAttribute("checked") && fired.HasAttribute("disabled"));
        Assert.Contains("heat the empty crucible and lid", fired.ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.False(careful.HasAttribute("checked") || careful.HasAttribute("disabled"));
        Assert.Contains("fired empty and kept dry (by the step 'heat the empty crucible and lid')", page.QuerySelector(".planned")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_the_step_is_left_out_it_is_the_teachers_to_say()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument without = await screen.Page($"{Magnesium}?without=firing");
        Assert.False(Condition(without, "fired").HasAttribute("checked") || Condition(without, "fired").HasAttribute("disabled"));
        Assert.DoesNotContain("fired empty", without.QuerySelector(".planned")!.TextContent, StringComparison.Ordinal);
        IDocument said = await screen.Page($"{Magnesium}?without=firing&condition=fired");
        Assert.True(Condition(said, "fired").HasAttribute("checked"));
        string planned = said.QuerySelector(".planned")!.TextContent;
        Assert.Contains("fired empty and kept dry", planned, StringComparison.Ordinal);
        Assert.DoesNotContain("by the step 'heat the empty", planned, StringComparison.Ordinal);
    }

    private static IElement Condition(IDocument page, string id) => page.QuerySelector($"input[name=condition][value={id}]")!;
}
