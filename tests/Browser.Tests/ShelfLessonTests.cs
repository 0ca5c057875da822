using System.Globalization;
using Calx.Browser.Tests.Students;

namespace Calx.Browser.Tests;

/// <summary>
/// Lessons of two practicals of the shelf from the first reading to what the class found: mass against time, and current and time beside
/// weighings. What stands in the tables at the end is held against what was typed and against numbers worked out by hand.
/// </summary>
public sealed class ShelfLessonTests(Chromium chromium)
{
    private const int Points = 19;

    [Fact]
    public async Task Mass_against_time_is_typed_on_phones_and_from_a_slip_through_stop_and_a_lost_connection()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { PracticalId = "marble-and-acid", Groups = 3 });
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        IPage one = await lab.Phone(1), two = await lab.Phone(2);
        await Weigh(one, "84.12", "124.80", "142.05");
        await Weigh(two, "79.95", "120.63", "137.80");

        string[] ones = Curve(142.05, loss: 0.86, halfLife: 1.5), twos = Curve(137.80, loss: 0.85, halfLife: 1.6);
        await OpenPoints(one);
        await TypePoints(one, [.. ones.Select((p, i) => i == 3 ? p.Replace('.', ',') : p)]);
        await Expect(one.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await Expect(one.Locator("[data-point='point-2-min']")).ToContainTextAsync($"{ones[3]} g");

        // Half of the next number is typed when STOP fills the page: it stays half typed, and nothing is sent of it.
        await OpenPoints(two);
        await two.Keyboard.TypeAsync("137");
        await teacher.Keyboard.PressAsync("s");
        await Expect(two.Locator(".fill.stop")).ToContainTextAsync("Hands off.");
        await Expect(teacher.Locator("h1")).ToContainTextAsync("Stopped");
        await teacher.Keyboard.PressAsync("s");
        await Expect(two.Locator(".fill.stop")).ToHaveCountAsync(0);
        await two.Locator("[name='point-0.5-min']").FillAsync("");
        await two.Context.SetOfflineAsync(true);
        await TypePoints(two, [.. twos.Take(5), "136.81"]);
        await Expect(two.Locator("[data-line]")).ToHaveTextAsync("No connection: 6 wait to be sent");
        await two.Context.SetOfflineAsync(false);
        await Expect(two.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await two.ReloadAsync();
        // The points at 3.5 and 4 min were missed, and stay empty.
        await two.Locator("[name='point-4.5-min']").FocusAsync();
        await TypePoints(two, [.. twos.Skip(8)]);
        await Expect(two.Locator("[data-line]")).ToHaveTextAsync("Connected");
        await Expect(teacher.Locator("article[aria-labelledby=t2]")).ToContainTextAsync("17 of 19 points");
        await End(one, "141.18");
        await End(two, "136.96");

        await CorrectAPoint(lab, teacher, two, twos[5]);
        await TheCurveIsAsked(one, ["40.68", "0.87", "0.0400", "0.881", "98.8", "0.40", "1.5"]);
        await TypeTheSlip(lab, teacher, ["85.33", "126.01", "143.27", "142.41"], Curve(143.27, loss: 0.87, halfLife: 1.45));
        await Finish(lab, teacher);

        // 0.03587 of 40.68 g of acid is HCl, 36.458 g/mol, and 2 mol of it make 1 mol of CO2, 44.009 g/mol (IUPAC 2021: H 1.008, Cl 35.45,
        // C 12.011, O 15.999): 0.8807 g are due, of which 0.87 g, 0.84 g and 0.86 g left.
        Near([98.78, 95.38, 97.65], await Column(teacher, "groups", "gas that left as a share of what is due / %"), 0.06);
        Assert.Equal(["21", "19", "21"], (await Column(teacher, "curves", "Points")).Take(3));
        // The curves that were typed: loss L, half-life h, rate at the start L ln 2 / h.
        Near([0.86, 0.85, 0.87], await Column(teacher, "curves", "loss in the end / g"), 0.015);
        Near([1.5, 1.6, 1.45], await Column(teacher, "curves", "half-life / min"), 0.08);
        Near([0.397, 0.368, 0.416], await Column(teacher, "curves", "rate at the start / g/min"), 0.025);
        Assert.All((await Column(teacher, "curves", "Order")).Take(3), order => Assert.StartsWith("first", order, StringComparison.Ordinal));
        await Expect(teacher.Locator(".report figure", new() { HasText = "time / min" })).ToBeVisibleAsync();
        // One mark each for acid, loss, moles and share, two for what is due; two for a rate within a hand's tangent of 0.397, one for 1.5 min.
        await teacher.GotoAsync($"{lab.LessonPath}/marking/students/1");
        await Expect(teacher.Locator("dl.figures").First).ToContainTextAsync("9 of 18");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task Current_and_time_are_read_beside_weighings_and_lead_to_two_electrons_and_to_marks()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { PracticalId = "copper-electrolysis", Groups = 3 });
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        IPage one = await lab.Phone(1), two = await lab.Phone(2);
        await Read(one, "9.41", "12.09", "0.40", "1200", "12.25", "9.25");
        await Read(two, "8.90", "11.64", "0,41", "1195", "11.80", "8.74");
        await Expect(teacher.Locator("article[aria-labelledby=t2]")).ToContainTextAsync("8.74 g");
        await AnswerAll(one, ["0.16", "0.16", "480", "0.004975", "0.002518", "1.98"]);
        await Grid(lab, teacher, 3, ("anodeBefore", "10.23"), ("cathodeBefore", "12.50"), ("current", "0.39"), ("time", "1210"), ("cathodeAfter", "12.62"), ("anodeAfter", "10.07"));
        await Finish(lab, teacher);

        // I t M / (F m) with F = 96485.33212 C/mol (CODATA 2018) and M(Cu) = 63.546 g/mol (IUPAC 2021): 480 C, 489.95 C and 471.9 C for
        // 0.16 g, 0.16 g and 0.12 g. Half of I t M / F is the copper that is due.
        Near([1.976, 2.017, 2.590], await Column(teacher, "groups", "electrons for one atom of copper"), 0.006);
        Near([0.1581, 0.1613, 0.1554], await Column(teacher, "groups", "copper due for the charge / g"), 0.0006);
        Assert.Equal(["0.40", "0.41", "0.39"], await Column(teacher, "groups", "Current / A"));

        await teacher.GotoAsync($"{lab.LessonPath}/marking/students/1");
        await Expect(teacher.Locator("dl.figures").First).ToContainTextAsync("7 of 19");
        lab.NothingAmiss();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Pages_of_points_have_nothing_serious_and_are_not_wider_than_their_screen(ColorScheme scheme)
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { PracticalId = "marble-and-acid", Groups = 2 });
        IPage phone = await lab.Phone(1, Screens.Phone(scheme).ForAxe());
        await phone.GotoAsync("/table/points");
        await phone.Locator("[data-start]").ClickAsync();
        await TypePoints(phone, ["141.87", "141.7"]);
        await Expect(phone.Locator("[data-trouble]")).ToBeHiddenAsync();
        await Expect(phone.Locator("[data-point='point-1-min']")).ToContainTextAsync("141.7 g");
        IPage teacher = await lab.Teacher(Screens.Laptop(scheme).ForAxe());
        await teacher.GotoAsync($"{lab.LessonPath}/points");
        foreach (IPage page in (IPage[])[phone, teacher])
        {
            Assert.Empty(await Accessibility.SeriousOn(page));
            Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), page.Url);
        }
    }

    /// <summary>The mass each half minute while the loss dies away with a half-life in min: what a balance of 0.01 g would show.</summary>
    private static string[] Curve(double start, double loss, double halfLife) =>
        [.. Enumerable.Range(1, Points).Select(i => (start - (loss * (1 - Math.Pow(2, -0.5 * i / halfLife)))).ToString("F2", CultureInfo.InvariantCulture))];

    private static async Task Weigh(IPage phone, params string[] written)
    {
        foreach (string one in written)
        {
            await phone.GoOnToReading();
            await phone.Type(one);
        }
    }

    /// <summary>Weighings by the keypad, other readings by the keyboard: no balance is chosen for them.</summary>
    private static async Task Read(IPage phone, params string[] written)
    {
        foreach (string one in written)
        {
            await phone.GoOnToReading();
            if (await phone.Stage().Locator(".letters").CountAsync() > 0)
            {
                await phone.Type(one);
                continue;
            }

            await phone.Stage().Locator(".figure").FillAsync(one);
            await phone.Stage().Locator("form[data-typing] > button.tall").ClickAsync();
        }
    }

    private static async Task OpenPoints(IPage phone)
    {
        await phone.Stage().Locator("a[href='/table/points']").ClickAsync();
        await phone.Locator("[data-start]").ClickAsync();
        await Expect(phone.Locator("[name='point-0.5-min']")).ToBeFocusedAsync();
    }

    private static async Task TypePoints(IPage phone, string[] points)
    {
        foreach (string point in points)
        {
            await phone.Keyboard.TypeAsync(point);
            await phone.Keyboard.PressAsync("Enter");
        }
    }

    private static async Task End(IPage phone, string written)
    {
        await phone.Locator("nav.parts a").First.ClickAsync();
        await Weigh(phone, written);
    }

    private static async Task CorrectAPoint(Lab lab, IPage teacher, IPage phone, string right)
    {
        await teacher.GotoAsync($"{lab.LessonPath}/groups/2/points");
        ILocator slip = teacher.Locator("[data-what='point-3-min']");
        await Expect(slip).ToHaveValueAsync("136.81");
        await slip.FillAsync(right);
        await slip.PressAsync("Enter");
        await Expect(teacher.Locator("#reason")).ToBeFocusedAsync();
        await teacher.Keyboard.TypeAsync("the paper record says so");
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(teacher.Locator("[data-grid-said]")).ToContainTextAsync($"{right} kept");
        await phone.Open("sent");
        await phone.Locator("#sent a[href='/table/points']").ClickAsync();
        await Expect(phone.Locator("[data-point='point-3-min'] s")).ToHaveTextAsync("136.81");
    }

    /// <summary>Rate and half-life are read off the curve, for which the points stand above the questions.</summary>
    private static async Task TheCurveIsAsked(IPage phone, string[] answers)
    {
        await AnswerAll(phone, answers);
        await Expect(phone.Locator("#points dd")).ToHaveCountAsync(Points + 2);
    }

    private static async Task TypeTheSlip(Lab lab, IPage teacher, string[] ends, string[] points)
    {
        await Grid(lab, teacher, 3, ("flask", ends[0]), ("withAcid", ends[1]), ("start", ends[2]), ("end", ends[3]));
        await teacher.GotoAsync($"{lab.LessonPath}/points");
        await teacher.Locator("[data-group='3'][data-what='point-0.5-min']").FocusAsync();
        foreach (string point in points)
        {
            await teacher.Keyboard.TypeAsync(point);
            await teacher.Keyboard.PressAsync("Enter");
            await Expect(teacher.Locator("[data-group='3'].waiting")).ToHaveCountAsync(0);
        }

        await Expect(teacher.Locator("[data-group='3'].kept")).ToHaveCountAsync(Points);
    }

    private static async Task Grid(Lab lab, IPage teacher, int group, params (string What, string Written)[] readings)
    {
        await teacher.GotoAsync($"{lab.LessonPath}/grid");
        await teacher.Locator($"[name='b.{group}']").FillAsync("B");
        foreach ((string what, string written) in readings)
        {
            ILocator cell = teacher.Locator($"[data-what='{what}'][data-group='{group}']");
            await cell.FillAsync(written);
            await cell.PressAsync("Enter");
            await Expect(cell).ToHaveClassAsync(new System.Text.RegularExpressions.Regex("kept"));
        }
    }

    private static async Task AnswerAll(IPage phone, string[] answers)
    {
        await phone.BeginToAnswer(1);
        for (int i = 0; i < answers.Length; i++)
        {
            await Expect(phone.Question().Locator(".between")).ToContainTextAsync($"{i + 1} of ");
            ILocator unit = phone.Question().Locator("[name=unit]");
            await phone.Question().Locator(".figure").FillAsync(answers[i]);
            if ((await unit.InputValueAsync()).Length == 0)
            {
                await unit.SelectOptionAsync("none");
            }

            await phone.Question().GetByText("Send").ClickAsync();
        }

        await Expect(phone.Locator("[data-line]")).ToHaveTextAsync("Connected");
    }

    /// <summary>Ends the lesson and opens what the class found, with causes.</summary>
    private static async Task Finish(Lab lab, IPage teacher)
    {
        teacher.Dialog += (_, dialog) => dialog.AcceptAsync();
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        await teacher.GetByRole(AriaRole.Button, new() { Name = "End", Exact = true }).ClickAsync();
        await teacher.WaitForURLAsync("**/findings");
        await teacher.GetByRole(AriaRole.Link, new() { Name = "Show causes" }).ClickAsync();
        await Expect(teacher.GetByRole(AriaRole.Link, new() { Name = "Hide causes" })).ToBeVisibleAsync();
    }

    /// <summary>The cells of a column of one of the report's tables.</summary>
    private static async Task<IReadOnlyList<string>> Column(IPage teacher, string heading, string name)
    {
        ILocator table = teacher.Locator($"[aria-labelledby='{heading}'] table");
        string[] names = [.. (await table.Locator("thead th").AllInnerTextsAsync()).Select(Plain)];
        int at = Array.IndexOf(names, name);
        Assert.True(at > 0, $"No column '{name}' among {string.Join(" | ", names)}.");
        return [.. (await table.Locator($"tbody tr > :nth-child({at + 1})").AllInnerTextsAsync()).Select(Plain)];
    }

    private static string Plain(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static double Number(string cell) => double.Parse(cell.Split('±')[0].Trim().Replace('\u2212', '-'), CultureInfo.InvariantCulture);

    private static void Near(double[] expected, IReadOnlyList<string> cells, double within)
    {
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], Number(cells[i]), within);
        }
    }
}
