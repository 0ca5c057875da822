using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx plan</c>: its answer, its shape and its 'no'.</summary>
public sealed class PlanCommandTests
{
    private const string Magnesium = "magnesium-oxide";

    [Fact]
    public void A_lesson_that_does_not_fit_says_so_and_names_the_nearest_that_does()
    {
        Terminal run = Terminal.Run("plan", Magnesium, "--groups", "12", "--balances", "2", "--resolution", "0.01", "--minutes", "60");
        Assert.Equal((1, ""), (run.ExitCode, run.Error));
        Assert.Contains("The lesson does not fit 60 min.", run.Output, StringComparison.Ordinal);
        Assert.Contains("The nearest plan that fits", Flat(run.Output), StringComparison.Ordinal);
        Assert.Contains("your employer's risk assessment and local rules decide", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_document_has_the_shape_that_scripts_rely_on()
    {
        Terminal run = Terminal.Run("plan", Magnesium, "--minutes", "65", "--heatings", "1", "--technician-prepares", "--move", "brief", "--move", "work-out", "--json");
        JsonElement plan = Schemas.Check("plan", run.Output);
        JsonElement lesson = plan.GetProperty("lesson");
        double fits = lesson.GetProperty("fits").GetDouble();
        Assert.InRange(fits, 0.3, 0.9);
        Assert.Equal(fits >= 0.5 ? 0 : 1, run.ExitCode);
        Assert.True(plan.GetProperty("canConclude").GetBoolean());
        Assert.Equal(["gains", "one-to-one"], plan.GetProperty("conclusions").EnumerateArray().Select(c => c.GetProperty("id").GetString()));
        Assert.All(plan.GetProperty("conclusions").EnumerateArray(), c => Assert.InRange(c.GetProperty("standardError").GetDouble(), 0, 0.01));
        Assert.Equal(["empty", "before", "after"], plan.GetProperty("expectedReadings").EnumerateArray().Select(r => r.GetProperty("reading").GetString()));
        Assert.True(lesson.GetProperty("p10").GetDouble() < lesson.GetProperty("p50").GetDouble());
        Assert.True(lesson.GetProperty("waiting").GetProperty("balance").GetProperty("mean").GetDouble() > 0);
        Assert.Equal(lesson.GetProperty("lastCall").GetDouble(), lesson.GetProperty("lastFirstHeating").GetDouble());
        Assert.All(plan.GetProperty("curve").EnumerateArray(), p => Assert.InRange(p.GetProperty("mass").GetDouble(), 0.04, 0.3));
        JsonElement ways = plan.GetProperty("ways");
        Assert.All(ways.EnumerateArray(), w => Assert.InRange(w.GetProperty("fits").GetDouble(), 0.5, 1));
        Assert.NotEqual(0, ways.GetArrayLength());
    }

    [Fact]
    public void Without_the_empty_vessel_the_answer_is_no_and_the_column_is_named()
    {
        Terminal run = Terminal.Run("plan", Magnesium, "--no-empty", "--minutes", "240", "--json");
        Assert.Equal(1, run.ExitCode);
        JsonElement plan = Schemas.Check("plan", run.Output);
        Assert.False(plan.GetProperty("canConclude").GetBoolean());
        Assert.Equal(["massChange"], plan.GetProperty("identifiable").EnumerateArray().Select(q => q.GetString()));
        Assert.All(plan.GetProperty("notIdentifiable").EnumerateArray(), q => Assert.Equal("empty", q.GetProperty("missing").GetString()));
        JsonElement formula = plan.GetProperty("conclusions")[1];
        Assert.Equal(JsonValueKind.Null, formula.GetProperty("class").ValueKind);
        Assert.Contains("lacks the reading", formula.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal("fits", plan.GetProperty("lesson").GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData(Magnesium, "0.31", "0.3 g at most (ribbon only, never powder)")]
    [InlineData("copper-sulfate-hydrate", "3.5", "3 g at most")]
    public void More_than_a_class_may_use_is_refused_with_the_reason(string practical, string mass, string reason)
    {
        Terminal text = Terminal.Run("plan", practical, "--mass", mass);
        Assert.Equal((1, ""), (text.ExitCode, text.Error));
        Assert.Contains(reason, Flat(text.Output), StringComparison.Ordinal);
        Terminal json = Terminal.Run("plan", practical, "--mass", mass, "--json");
        JsonElement plan = Schemas.Check("plan", json.Output);
        Assert.Equal(1, json.ExitCode);
        Assert.Contains(reason, plan.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, plan.GetProperty("lesson").ValueKind);
    }

    [Fact]
    public void Prices_and_a_weighed_metre_give_cost_and_length()
    {
        Terminal run = Terminal.Run(
            "plan", Magnesium, "--minutes", "240", "--groups", "10", "--metre", "0.96", "--price", "crucible=2.50", "--price", "ribbon=0.4", "--json");
        JsonElement plan = Schemas.Check("plan", run.Output);
        Assert.Equal(0, run.ExitCode);
        JsonElement ribbon = Kit(plan, "ribbon");
        // 10 groups of 0.24 g and a fifth more, 2.88 g; 0.96 g a metre; what is used up is without the fifth.
        Assert.Equal(2.88, ribbon.GetProperty("amount").GetDouble(), 9);
        Assert.Equal(3.0, ribbon.GetProperty("lengthInMetres").GetDouble(), 9);
        Assert.Equal(0.96, ribbon.GetProperty("cost").GetDouble(), 9);
        // Four crucibles in a hundred break: 0.4 of 10, at 2.50.
        Assert.Equal(1.0, Kit(plan, "crucible").GetProperty("cost").GetDouble(), 9);
        Assert.Equal(1.96, plan.GetProperty("cost").GetDouble(), 9);
        Terminal text = Terminal.Run("plan", Magnesium, "--minutes", "240", "--groups", "10", "--metre", "0.96", "--price", "crucible=2.50");
        Assert.Contains("25 cm each, 3.0 m in all", text.Output, StringComparison.Ordinal);

        static JsonElement Kit(JsonElement plan, string id) => plan.GetProperty("kit").EnumerateArray().Single(k => k.GetProperty("id").GetString() == id);
    }

    [Fact]
    public void The_same_words_print_the_same_plan()
    {
        string[] words = ["plan", "copper-sulfate-hydrate", "--minutes", "90", "--heatings", "1", "--seed", "7", "--json"];
        Assert.Equal(Terminal.Run(words).Output, Terminal.Run(words).Output);
        Assert.NotEqual(Terminal.Run(words).Output, Terminal.Run([.. words[..^2], "8", "--json"]).Output);
    }

    [Fact]
    public void Own_times_balances_and_kit_are_taken()
    {
        JsonElement usual = Plan("--minutes", "150");
        JsonElement slow = Plan("--minutes", "150", "--time", "cool=20,25,40");
        Assert.True(slow.GetProperty("lesson").GetProperty("p50").GetDouble() > usual.GetProperty("lesson").GetProperty("p50").GetDouble() + 15);
        JsonElement burners = Plan("--minutes", "150", "--kit", "burner=4");
        Assert.Equal("burner", burners.GetProperty("lesson").GetProperty("bottleneck").GetString());
        JsonElement mixed = Plan("--minutes", "150", "--resolution", "0.01", "--resolution", "0.1");
        Assert.Equal([0.01, 0.1], mixed.GetProperty("plan").GetProperty("balances").EnumerateArray().Select(b => b.GetProperty("resolution").GetDouble()));
        Assert.DoesNotContain("fire-empty", Plan("--minutes", "150", "--without", "firing").GetProperty("lesson").ToString(), StringComparison.Ordinal);

        static JsonElement Plan(params string[] words) => Schemas.Check("plan", Terminal.Run(["plan", Magnesium, "--no-ways", .. words, "--json"]).Output);
    }

    [Theory]
    [InlineData("--want", "one-to-on", "magnesium-oxide has no conclusion 'one-to-on'; expected gains, one-to-one, within-five; did you mean one-to-one?")]
    [InlineData("--condition", "fierd", "did you mean fired?")]
    [InlineData("--without", "fire", "--without: magnesium-oxide has no part to leave out 'fire'; expected firing")]
    [InlineData("--move", "burn", "--move: magnesium-oxide has no step for another lesson 'burn'; expected brief, work-out")]
    [InlineData("--alongside", "arrive", "--alongside: magnesium-oxide has no step to do meanwhile 'arrive'; expected clear-up")]
    [InlineData("--time", "cool=20,10,5", "its least, likely and most minutes, such as cool=10,12,20")]
    [InlineData("--time", "cool=2,1", "its least, likely and most minutes")]
    [InlineData("--time", "cool=NaN,1,2", "its least, likely and most minutes")]
    [InlineData("--time", "coll=1,2,3", "did you mean cool?")]
    [InlineData("--kit", "burner=0", "a whole number from 1 to 1000")]
    [InlineData("--kit", "burner", "expected a piece of kit, '=' and")]
    [InlineData("--price", "ribon=2", "did you mean ribbon?")]
    [InlineData("--price", "ribbon=-2", "a price such as 2.40")]
    [InlineData("--price", "ribbon=1e400", "a price such as 2.40")]
    [InlineData("--resolution", "0.03", "no balance steps by '0.03' g")]
    [InlineData("--resolution", "fine", "no balance steps by 'fine' g")]
    [InlineData("--heatings", "4", "--heatings: magnesium-oxide allows 3 at most")]
    [InlineData("--groups", "0", "not a whole number from 1 to 60")]
    [InlineData("--minutes", "-5", "--minutes")]
    [InlineData("--mass", "0", "--mass")]
    [InlineData("--trials", "99", "not a whole number from 1 to 6")]
    [InlineData("--stagger", "x", "--stagger")]
    [InlineData("--metre", "0", "--metre: '0' is not a number from 0.01 to 20")]
    [InlineData("--metre", "102", "--metre: '102' is not a number from 0.01 to 20")]
    [InlineData("--mass", "0,24", "--mass: '0,24' is not a number from 0.0001 to 1000; write a full stop, 0.24")]
    [InlineData("--price", "ribbon=0,4", "write a full stop, 0.4")]
    [InlineData("--resolution", "0.01,0.1", "--resolution once for each balance")]
    [InlineData("--resolution", "1000", "1 at most")]
    [InlineData("--students", "5", "--students: 5 students do not make 12 groups; expected 12 to 120")]
    [InlineData("--stagger", "90", "the second wave would start after the bell")]
    [InlineData("--html", "--json", "--html: its value is missing; expected --html FILE")]
    [InlineData("--html", "", "--html: its value is missing")]
    public void A_word_that_is_not_understood_is_named(string option, string word, string expected)
    {
        Terminal run = Terminal.Run("plan", Magnesium, option, word);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith("calx plan: ", run.Error, StringComparison.Ordinal);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--mass 0.2 --mass 0.1", "--mass: given 2 times; give it once")]
    [InlineData("--time cool=1,2,3 --time cool=2,3,4", "--time: 'cool' is given twice; give it once")]
    [InlineData("--price lid=1 --price lid=2", "--price: 'lid' is given twice; give it once")]
    [InlineData("--mass", "--mass: its value is missing; expected --mass G")]
    public void What_is_given_twice_or_without_its_value_is_named(string words, string expected)
    {
        Terminal run = Terminal.Run(["plan", Magnesium, .. words.Split(' ')]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith($"calx plan: {expected}", run.Error, StringComparison.Ordinal);
    }

    /// <summary>A conclusion that no amount makes likely once ended the program.</summary>
    [Fact]
    public void A_conclusion_that_is_hardly_ever_reached_is_planned_all_the_same()
    {
        Terminal run = Terminal.Run("plan", Magnesium, "--want", "within-five", "--no-ways", "--minutes", "200");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("No amount up to 0.3 g", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_way_out_can_be_typed_as_it_stands()
    {
        string[] words = ["plan", Magnesium, "--minutes", "75", "--heatings", "1", "--groups", "8"];
        JsonElement plan = Schemas.Check("plan", Terminal.Run([.. words, "--json"]).Output);
        JsonElement way = plan.GetProperty("ways")[0];
        string[] options = way.GetProperty("options").GetString()!.Split(' ');
        string[] kept = [.. words.Where((w, i) => !options.Contains(w) && (i == 0 || !options.Contains(words[i - 1])))];
        JsonElement then = Schemas.Check("plan", Terminal.Run([.. kept, .. options, "--no-ways", "--json"]).Output);
        Assert.Equal(way.GetProperty("fits").GetDouble(), then.GetProperty("lesson").GetProperty("fits").GetDouble(), 0.04);
        Assert.Contains($"Ask again with: {options[0]}", Terminal.Run(words).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_coarse_balance_among_fine_ones_is_pointed_out()
    {
        Terminal run = Terminal.Run(
            "plan", Magnesium, "--groups", "12", "--resolution", "0.01", "--resolution", "0.01", "--resolution", "0.1", "--no-ways", "--minutes", "200");
        Assert.Contains("Leave the coarse one in the cupboard.", Flat(run.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Own_times_may_be_two_numbers_or_one()
    {
        JsonElement plan = Schemas.Check("plan", Terminal.Run(
            "plan", Magnesium, "--time", "cool=8,12", "--time", "burn=9", "--no-ways", "--minutes", "200", "--groups", "1", "--json").Output);
        JsonElement burn = plan.GetProperty("lesson").GetProperty("typical").GetProperty("bars").EnumerateArray().First(b => b.GetProperty("step").GetString() == "burn");
        Assert.Equal(9, burn.GetProperty("to").GetDouble() - burn.GetProperty("from").GetDouble(), 6);
    }

    [Fact]
    public void Every_fault_has_its_line()
    {
        Terminal run = Terminal.Run("plan", Magnesium, "--want", "x", "--move", "y", "--heatings", "9", "--resolution", "0.01", "--resolution", "0.1", "--balances", "3");
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(4, run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Contains("2 are given for 3 balances", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan", 2, "which practical?")]
    [InlineData("plan no-such", 2, "no-such")]
    [InlineData("plan missing.yaml", 2, "missing.yaml")]
    public void A_practical_is_needed(string words, int code, string expected)
    {
        Terminal run = Terminal.Run(words.Split(' '));
        Assert.Equal((code, ""), (run.ExitCode, run.Output));
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_demonstration_is_planned_for_one_group()
    {
        Terminal run = Terminal.Run("plan", Magnesium, "--groups", "1", "--heatings", "1", "--minutes", "120");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("a plan for one group in 120 min", run.Output, StringComparison.Ordinal);
        Assert.Contains("The lesson fits 120 min.", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Waiting", run.Output, StringComparison.Ordinal);
    }

    // The file says that it is a demonstration: common practice, no source.
    [Fact]
    public void What_is_a_demonstration_is_planned_for_one_group_and_refused_to_more()
    {
        const string Demonstration = "copper-oxide-reduction";
        Assert.Contains("a plan for one group in 60 min", Terminal.Run("plan", Demonstration, "--no-ways").Output, StringComparison.Ordinal);
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "away.txt"), "Ana\n");
        foreach (string words in (string[])["plan", "simulate --csv class.csv", "papers --out .", "catch-up --students away.txt --seed 1 --out ."])
        {
            string[] all = words.Split(' ');
            Terminal run = Terminal.RunIn(folder.FullName, [all[0], Demonstration, .. all[1..], "--groups", "2"]);
            Assert.Equal(1, run.ExitCode);
            Assert.Contains("2 groups are more than may do it side by side: 1 at most", System.Text.RegularExpressions.Regex.Replace(run.Output + run.Error, @"\s+", " "), StringComparison.Ordinal);
            Assert.Single(Directory.GetFiles(folder.FullName));
        }
    }

    [Fact]
    public void The_page_is_written_whole_and_asks_for_nothing()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        string[] words = ["plan", Magnesium, "--minutes", "240", "--no-ways", "--html", "plan.html"];
        Terminal run = Terminal.RunIn(folder.FullName, words);
        Assert.Equal((0, "The plan is in plan.html\n"), (run.ExitCode, run.Error));
        string html = File.ReadAllText(Path.Combine(folder.FullName, "plan.html"));
        Assert.Contains("Burning magnesium in a crucible", html, StringComparison.Ordinal);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http://", html.Replace("http://www.w3.org/", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Terminal missing = Terminal.RunIn(folder.FullName, [.. words[..^1], "no/such/plan.html"]);
        Assert.Equal((74, ""), (missing.ExitCode, missing.Output));
        Assert.Contains("the plan cannot be written there", missing.Error, StringComparison.Ordinal);
    }

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
