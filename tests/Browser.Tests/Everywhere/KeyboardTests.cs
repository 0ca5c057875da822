using Calx.Browser.Tests.Students;

namespace Calx.Browser.Tests.Everywhere;

/// <summary>Everything that can be pressed is reached with Tab, and what has the focus shows it.</summary>
public sealed class KeyboardTests(Chromium chromium)
{
    /// <summary>What can be pressed and is to be seen, one number each, so that what Tab has reached can be told.</summary>
    private const string Number = """
        () => {
          const all = [...document.querySelectorAll("a[href], button, input:not([type=hidden]), select, textarea, summary")]
            .filter(e => e.checkVisibility({ visibilityProperty: true }) && !e.disabled && e.tabIndex >= 0);
          // Of a set of choices Tab reaches one; the arrows reach the others.
          const groups = new Set();
          let n = 0;
          for (const e of all) {
            if (e.type === "radio") { const key = e.form?.dataset.what + e.name; if (groups.has(key)) continue; groups.add(key); }
            e.dataset.reach = String(n++);
          }
          return n;
        }
        """;

    /// <summary>The number of what has the focus, and whether that shows.</summary>
    private const string Focused = """
        () => {
          const e = document.activeElement;
          if (!e || e === document.body) return ["", true];
          const style = getComputedStyle(e), label = e.nextElementSibling && e.type === "radio" ? getComputedStyle(e.nextElementSibling) : null;
          const shows = s => s && ((s.outlineStyle !== "none" && parseFloat(s.outlineWidth) > 0) || s.boxShadow !== "none");
          const reach = e.type === "radio" ? [...e.form.elements].find(x => x.name === e.name && x.dataset.reach)?.dataset.reach : e.dataset.reach;
          return [reach ?? "", shows(style) || shows(label)];
        }
        """;

    [Theory]
    [InlineData("live")]
    [InlineData("grid")]
    [InlineData("projector")]
    [InlineData("groups/1")]
    [InlineData("marking/settings")]
    public async Task Tab_reaches_everything_on_the_teachers_pages_of_a_lesson(string page)
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/{page}");
        await ReachesAll(teacher);
    }

    [Fact]
    public async Task Tab_reaches_everything_on_a_groups_page()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage phone = await lab.Phone(group: 1);
        await ReachesAll(phone);
        await phone.GoOnToReading();
        await ReachesAll(phone);
        await phone.Open("seen");
        await ReachesAll(phone);
    }

    private static async Task ReachesAll(IPage page)
    {
        await page.EvaluateAsync("() => { document.activeElement?.blur(); window.scrollTo(0, 0); }");
        int count = await page.EvaluateAsync<int>(Number);
        Assert.True(count > 3);
        var reached = new HashSet<string>();
        for (int i = 0; i < count + 20; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            System.Text.Json.JsonElement focused = await page.EvaluateAsync<System.Text.Json.JsonElement>(Focused);
            reached.Add(focused[0].GetString()!);
            Assert.True(focused[1].GetBoolean(), $"Nothing shows the focus on number {focused[0]} of {page.Url}: {await Named(page)}");
        }

        string[] missed = [.. Enumerable.Range(0, count).Select(n => FormattableString.Invariant($"{n}")).Where(n => !reached.Contains(n))];
        string names = string.Join(" | ", await Task.WhenAll(missed.Select(m => page.Locator($"[data-reach='{m}']").EvaluateAsync<string>("e => e.outerHTML.slice(0, 160)"))));
        Assert.True(missed.Length == 0, $"Tab does not reach on {page.Url}: {names}");
    }

    private static Task<string> Named(IPage page) => page.EvaluateAsync<string>("() => document.activeElement.outerHTML.slice(0, 160)");
}
