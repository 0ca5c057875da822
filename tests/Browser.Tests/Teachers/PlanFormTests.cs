using System.Text.RegularExpressions;

namespace Calx.Browser.Tests.Teachers;

/// <summary>The form of a plan, whose figures change as it is filled in.</summary>
public sealed class PlanFormTests(Chromium chromium)
{
    private const string Plan = "/practicals/magnesium-oxide";

    [Fact]
    public async Task A_change_of_the_form_changes_figures_and_address_without_a_button()
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync(Plan);
        await Expect(teacher.Locator("p.planned")).ToContainTextAsync("12 groups");
        await teacher.Locator("#f-groups").FillAsync("10");
        await Expect(teacher.Locator("p.planned")).ToContainTextAsync("10 groups");
        await Expect(teacher).ToHaveURLAsync(new Regex("groups=10"));
        await teacher.Locator("#f-mass").FillAsync("9");
        await Expect(teacher.Locator("#f-mass-fault")).ToContainTextAsync("more than a class may use");
        await teacher.Locator("#f-mass").FillAsync("");
        await Expect(teacher.Locator("#f-mass-fault")).ToBeEmptyAsync();
        lab.NothingAmiss();
    }

    [Fact]
    public async Task Figures_on_their_way_do_not_come_in_under_a_form_that_has_gone_back()
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher();
        var asked = new TaskCompletionSource();
        var released = new TaskCompletionSource();
        await teacher.RouteAsync(new Regex("figures\\?.*groups=13"), async route =>
        {
            asked.TrySetResult();
            await released.Task;
            await route.ContinueAsync();
        });
        await teacher.GotoAsync(Plan);
        await teacher.Locator("#f-groups").FillAsync("13");
        await asked.Task.WaitAsync(TestContext.Current.CancellationToken);
        await teacher.Locator("#f-groups").FillAsync("");
        await Expect(teacher.Locator("#figures")).Not.ToHaveAttributeAsync("aria-busy", "true");
        released.SetResult();
        // The program works plans out one at a time: once this is answered, so would the one before be.
        Assert.Equal(200, await teacher.EvaluateAsync<int>($"async () => (await fetch('{Plan}/figures?groups=14')).status"));
        await Expect(teacher.Locator("p.planned")).ToContainTextAsync("12 groups");
        Assert.DoesNotContain("13", new Uri(teacher.Url).Query, StringComparison.Ordinal);
        lab.NothingAmiss();
    }

    [Fact]
    public async Task What_a_step_brings_about_can_be_said_only_once_the_step_is_left_out()
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync(Plan);
        ILocator fired = teacher.Locator("[name=condition][value=fired]"), without = teacher.Locator("[name=without][value=firing]");
        await Expect(fired).ToBeCheckedAsync();
        await Expect(fired).ToBeDisabledAsync();
        await without.CheckAsync();
        await Expect(fired).Not.ToBeCheckedAsync();
        await Expect(teacher.Locator("p.planned")).Not.ToContainTextAsync("fired empty");
        await fired.CheckAsync();
        await Expect(teacher.Locator("p.planned")).ToContainTextAsync("fired empty and kept dry");
        await without.UncheckAsync();
        await Expect(fired).ToBeDisabledAsync();
        await Expect(teacher.Locator("p.planned")).ToContainTextAsync("(by the step 'heat the empty crucible and lid')");
        Assert.DoesNotContain("condition", new Uri(teacher.Url).Query, StringComparison.Ordinal);
        lab.NothingAmiss();
    }
}
