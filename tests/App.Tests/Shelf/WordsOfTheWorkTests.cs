using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.App.Tests.Pages.Teachers;
using Calx.Practicals.Definition;
using Calx.Records;

namespace Calx.App.Tests.Shelf;

/// <summary>Pages speak of heating where something is heated, of drying where something is dried, and of neither elsewhere. Which
/// practical does what is read off its file.</summary>
public sealed class WordsOfTheWorkTests
{
    private const string OfHeat = @"heat|flame|\bcool|gas off|turn the gas off|burner|tongs";

    private static Practical[] Unheated =>
        [.. BuiltInPracticals.All.Where(p => p.Cooling is null && p.Findings.ConstantMass is null && !p.Kit.Any(k => k.Flame))];

    [Fact]
    public async Task Where_nothing_is_heated_no_page_speaks_of_heat()
    {
        string[] cold = [.. Unheated.Select(p => p.Id)];
        Assert.Superset(
            new HashSet<string>(["carbonate-purity", "copper-electrolysis", "hydrogen-peroxide", "marble-and-acid", "precipitation-in-closed-flask", "tablet-in-water"]),
            cold.ToHashSet());
        await using TeachersScreen screen = await TeachersScreen.Start();
        var spoken = new List<string>();
        foreach (Practical practical in Unheated)
        {
            await foreach ((string page, string text) in Pages(screen, practical, live: practical.Id == "copper-electrolysis"))
            {
                spoken.AddRange(Regex.Matches(text, $".{{0,40}}({OfHeat}).{{0,40}}", RegexOptions.IgnoreCase).Select(m => $"{practical.Id}, {page}: {m.Value}"));
            }
        }

        Assert.Empty(spoken);
    }

    [Fact]
    public async Task Where_something_is_dried_pages_speak_of_drying()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        Practical practical = BuiltInPracticals.Find("copper-by-iron")!;
        await foreach ((string page, string text) in Pages(screen, practical, live: true))
        {
            Assert.DoesNotMatch(@"(?i)reheat|heat again|heatings? |flame|gas off", text);
            Assert.Equal(page == "table", text.Contains("Dry again or stop?", StringComparison.Ordinal));
            Assert.Equal(page == "plan", text.Contains("Dryings of every group", StringComparison.Ordinal));
            Assert.Equal(page == "lesson", text.Contains("‘dry again or stop’", StringComparison.Ordinal));
        }
    }

    /// <summary>What pages say besides the practical's own cautions, which may name what must not be near.</summary>
    /// <param name="live">Whether those of the lesson as it runs as well: they cost a forecast each, and speak alike in all practicals of a kind.</param>
    private static async IAsyncEnumerable<(string Page, string Text)> Pages(TeachersScreen screen, Practical practical, bool live)
    {
        yield return ("plan", Words(await screen.Page($"/practicals/{practical.Id}?groups=1&minutes=300"), practical));
        string lesson = await screen.Send(
            "/lessons", ("practical", practical.Id), ("plan", "?groups=1&minutes=300"), ("name", "9F"), ("year", "2026/27"), ("date", "2026-11-26"), ("room", "Lab 2"), ("decide", "yes"), ("trial", "yes"));
        var device = new Device(screen.Host.Browser());
        Calx.Records.Lessons.LessonDoor door = (await screen.Host.Store.OpenDoor(RecordId.Parse(lesson.Split('/')[^1]), "teacher", TestContext.Current.CancellationToken))!;
        await device.Send("/join", ("code", door.Code));
        await device.Send("/groups", ("group", "1"));
        yield return ("table", Words(await device.Page(), practical));
        if (!live)
        {
            yield break;
        }

        await Tell(screen, lesson, Acts.Began);
        foreach (string page in (string[])["live", "projector", "grid", "groups/1"])
        {
            yield return (page, Words(await screen.Page($"{lesson}/{page}"), practical));
        }

        yield return ("lesson", Words(await screen.Page(lesson), practical));
        await Tell(screen, lesson, Acts.Stop);
        yield return ("stopped", Words(await device.Page(), practical).Replace("Dry again or stop?", "", StringComparison.Ordinal));
    }

    private static Task<string> Tell(TeachersScreen screen, string lesson, string what) => screen.Send(
        $"{lesson}/write", ("id", NewEntryId.Draw().ToString()), ("kind", "happening"), ("group", "0"), ("trial", "1"), ("what", what), ("text", ""), ("back", lesson));

    private static string Words(IDocument page, Practical practical)
    {
        foreach (IElement hidden in page.QuerySelectorAll("script, style, svg").ToArray())
        {
            hidden.Remove();
        }

        string text = Regex.Replace(page.Body!.TextContent, @"\s+", " ");
        foreach (string own in practical.Hazards.SelectMany(h => (string[])[h.Control, h.Harm, h.Of]).Concat(practical.Kit.Select(k => k.Label)).Concat(practical.Faults.Select(f => f.Caution).OfType<string>()))
        {
            text = text.Replace(own.TrimEnd('.'), "", StringComparison.OrdinalIgnoreCase);
        }

        return text;
    }
}
