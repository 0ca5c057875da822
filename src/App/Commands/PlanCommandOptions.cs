using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Input;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.App.Commands;

/// <summary>The options of <c>calx plan</c>.</summary>
internal sealed class PlanCommandOptions
{
    private readonly Option<long?> groups = NumberOption.Whole("--groups", "groups that work side by side; otherwise 12, or as many as may; 1 is a demonstration", 1, PlanSettings.MostGroups);
    private readonly Option<long?> students = NumberOption.Whole("--students", "students; otherwise two a group", 1, 1000);
    private readonly Option<long?> balances = NumberOption.Whole("--balances", "how many balances; otherwise 2", 1, 20);
    private readonly Option<string[]> resolution = new("--resolution") { Description = "smallest step of the balances in g, once for all or once each; otherwise 0.01", HelpName = "G" };
    private readonly Option<double?> repeatability = NumberOption.FromTo("--repeatability", "standard deviation of repeated weighings in g; otherwise 0.7 steps (judgement)", "G", 0, 1);
    private readonly Option<double?> minutes = NumberOption.FromTo("--minutes", "length of the lesson; otherwise 60", "MIN", 1, PlanSettings.LongestLesson);
    private readonly Option<double?> mass = NumberOption.FromTo("--mass", "usual mass of a sample in g; otherwise the practical's", "G", 0.0001, 1000);
    private readonly Option<long?> trials = NumberOption.Whole("--trials", "trials of each group; otherwise 1", 1, PlanSettings.MostTrials);
    private readonly Option<long?> heatings = NumberOption.Whole("--heatings", "heatings of every group; otherwise 2, and again while the mass changes", 1, 100);
    private readonly Option<bool> noEmpty = new("--no-empty") { Description = "the empty vessel is not weighed" };
    private readonly Option<bool> prepared = new("--technician-prepares") { Description = "a technician does before the lesson what can be done before" };
    private readonly Option<string[]> wanted = new("--want") { Description = "a conclusion that the class is to come to; may be given several times", HelpName = "ID" };
    private readonly Option<string[]> condition = new("--condition") { Description = "what is said of the class; may be given several times", HelpName = "ID" };
    private readonly Option<string[]> without = new("--without") { Description = "what is left out, such as firing; may be given several times", HelpName = "WORD" };
    private readonly Option<string[]> move = new("--move") { Description = "a step that another lesson takes over; may be given several times", HelpName = "STEP" };
    private readonly Option<string[]> alongside = new("--alongside") { Description = "a step done while another goes on; may be given several times", HelpName = "STEP" };
    private readonly Option<double?> stagger = NumberOption.FromTo("--stagger", "minutes by which every second group starts later", "MIN", 0, PlanSettings.LongestLesson);
    private readonly Option<string[]> time = new("--time") { Description = "your own least, likely and most minutes of a step, such as cool=10,12,20; two for least and most, one where it is certain", HelpName = "STEP=A,B,C" };
    private readonly Option<string[]> kit = new("--kit") { Description = "how many there are of a piece of kit, such as burner=8", HelpName = "ID=N" };
    private readonly Option<string[]> price = new("--price") { Description = "price of a piece, or of a gram, such as crucible=2.40", HelpName = "ID=PRICE" };
    private readonly Option<double?> metre = NumberOption.FromTo("--metre", "mass in g of one metre of your own stock, weighed", "G", 0.01, 20);
    private readonly Option<long?> seed = NumberOption.Whole("--seed", "which of the possible simulations; otherwise 1", 0, long.MaxValue);
    private readonly Option<bool> noWays = new("--no-ways") { Description = "look for no ways out" };
    private readonly Option<string?> html = new("--html") { Description = "also write a plan with charts to this file", HelpName = "FILE" };
    private readonly Option<bool> json = JsonOption.Create();

    /// <summary>Those that say whether learned numbers are taken, and from where.</summary>
    public LearnedOptions Learned { get; } = new();

    /// <summary>Those that say which lesson.</summary>
    public IReadOnlyList<Option> OfLesson =>
    [
        groups, students, balances, resolution, repeatability, minutes, mass, trials, heatings, noEmpty, prepared, wanted, condition,
        without, move, alongside, stagger, time, kit, price, metre,
    ];

    /// <summary>All of them, in the order of the help page.</summary>
    public IReadOnlyList<Option> All => [.. OfLesson, .. Learned.All, seed, noWays, html, json];

    /// <summary>What is said of the lesson.</summary>
    public PlanWords Words(ParseResult result) => new()
    {
        Groups = (int)(result.GetValue(groups) ?? 1),
        TakesUsualGroups = result.GetValue(groups) is null,
        Students = (int?)result.GetValue(students),
        Balances = (int?)result.GetValue(balances),
        Resolutions = result.GetValue(resolution) ?? [],
        Repeatability = result.GetValue(repeatability),
        Minutes = result.GetValue(minutes) ?? PlanCommand.UsualMinutes,
        Mass = result.GetValue(mass),
        Trials = (int)(result.GetValue(trials) ?? 1),
        Heatings = (int?)result.GetValue(heatings),
        NoEmpty = result.GetValue(noEmpty),
        Prepared = result.GetValue(prepared),
        Stagger = result.GetValue(stagger) ?? 0,
        Wanted = result.GetValue(wanted) ?? [],
        Conditions = result.GetValue(condition) ?? [],
        Without = result.GetValue(without) ?? [],
        Moved = result.GetValue(move) ?? [],
        Alongside = result.GetValue(alongside) ?? [],
        Times = result.GetValue(time) ?? [],
        Kit = result.GetValue(kit) ?? [],
        Prices = result.GetValue(price) ?? [],
        Metre = result.GetValue(metre),
    };

    /// <summary>How it is worked out and shown.</summary>
    public PlanHow How(ParseResult result) => new(
        (ulong)(result.GetValue(seed) ?? 1), !result.GetValue(noWays), result.GetValue(html), result.GetValue(json));
}
