using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Input;

namespace Calx.App.Commands;

/// <summary>The options of <c>calx papers</c> besides those of the lesson.</summary>
internal sealed class PapersOptions
{
    private readonly Option<string[]> set = new("--set") { Description = $"which papers: {string.Join(", ", PapersWords.Sets)}; may be given several times; otherwise all, report and display only with --results", HelpName = "WHAT" };
    private readonly Option<string[]> level = new("--level") { Description = $"how much student sheets help: {string.Join(", ", PapersWords.KnownLevels)}; may be given several times; otherwise all", HelpName = "LEVEL" };
    private readonly Option<string[]> format = new("--format") { Description = $"in which form: {string.Join(", ", PapersWords.Formats)}; may be given several times; otherwise docx, html and xlsx; a paper that has none of them comes in those it has; svg and png write its pictures as files", HelpName = "FORM" };
    private readonly Option<string?> @out = new("--out") { Description = "the folder to write into; it is made where it is missing", HelpName = "DIR" };
    private readonly Option<string?> @class = new("--class") { Description = "the class, as printed", HelpName = "NAME" };
    private readonly Option<string?> date = new("--date") { Description = "the lesson's date, as printed", HelpName = "TEXT" };
    private readonly Option<string?> room = new("--room") { Description = "the room, as printed", HelpName = "TEXT" };
    private readonly Option<string?> period = new("--period") { Description = "the period, as printed", HelpName = "TEXT" };
    private readonly Option<string?> teacher = new("--teacher") { Description = "who teaches, as printed", HelpName = "NAME" };
    private readonly Option<bool> letter = new("--letter") { Description = "US Letter instead of A4" };
    private readonly Option<bool> large = new("--large") { Description = "letters of 18 point, for those who see little" };
    private readonly Option<bool> oneStep = new("--one-step") { Description = "student sheets with one step on each page, in large letters, with a box to tick" };
    private readonly Option<long?> seed = NumberOption.Whole("--seed", "which of the possible classes the cover sheet's simulated data are; otherwise 1", 0, long.MaxValue);
    private readonly Option<string?> tint = new("--tint") { Description = "colour of the sheet as six hexadecimal digits, such as fff4d6", HelpName = "RRGGBB" };

    private readonly Option<string?> results = new("--results") { Description = "the class's file of weighings, as 'calx analyse' reads it, for report and display; --resolution and --repeatability hold for it too", HelpName = "FILE" };
    private readonly Option<bool> accepted = new("--accepted") { Description = "the display also tells the accepted value and what follows from it" };
    private readonly Option<bool> a3 = new("--a3") { Description = "the display on A3" };

    /// <summary>All of them, in the order of the help page.</summary>
    public IReadOnlyList<Option> All => [@out, set, level, format, results, accepted, a3, @class, date, room, period, teacher, letter, large, oneStep, tint, seed];

    /// <summary>Those of a paper that is not of one lesson.</summary>
    public IReadOnlyList<Option> OfSheets => [@out, format, letter, large, tint];

    /// <summary>What was said.</summary>
    public PapersWords Words(ParseResult result) => new(
        result.GetValue(set) ?? [],
        result.GetValue(level) ?? [],
        result.GetValue(format) ?? [],
        result.GetValue(@out),
        new(result.GetValue(@class), result.GetValue(date), result.GetValue(room), result.GetValue(period), result.GetValue(teacher), null),
        result.GetValue(letter),
        result.GetValue(large),
        result.GetValue(tint),
        result.GetValue(oneStep),
        (ulong)(result.GetValue(seed) ?? 1)) { Results = result.GetValue(results), ShowsAccepted = result.GetValue(accepted), IsWallA3 = result.GetValue(a3) };
}
