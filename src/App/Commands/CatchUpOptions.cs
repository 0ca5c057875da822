using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Input;

namespace Calx.App.Commands;

/// <summary>The options of <c>calx catch-up</c> besides those of the lesson.</summary>
internal sealed class CatchUpOptions
{
    private readonly Option<string?> students = new("--students") { Description = "the students: a file with one name a line, or a table (CSV, XLSX) with the heading 'name'", HelpName = "FILE" };
    private readonly Option<long?> seed = NumberOption.Whole("--seed", "a number of your own: with it, the same name gives the same pack again", 0, long.MaxValue);
    private readonly Option<string?> @out = new("--out") { Description = "the folder to write into; it is made where it is missing", HelpName = "DIR" };
    private readonly Option<string?> truth = new("--truth") { Description = $"a new file for what is true of each pack, to mark from; otherwise {CatchUpWords.TruthName} in the folder", HelpName = "FILE" };
    private readonly Option<double?> odd = NumberOption.FromTo("--odd", "share of packs in which something went wrong, 0 to 1; otherwise 0.4 (judgement)", "SHARE", 0, 1);
    private readonly Option<string?> level = new("--level") { Description = $"how much the sheets help: {string.Join(", ", CatchUpWords.KnownLevels)}; otherwise standard", HelpName = "LEVEL" };
    private readonly Option<string[]> format = new("--format") { Description = $"in which form: {string.Join(", ", CatchUpWords.KnownFormats)}; may be given several times; otherwise docx and html", HelpName = "FORM" };
    private readonly Option<string?> @class = new("--class") { Description = "the class, as printed", HelpName = "NAME" };
    private readonly Option<string?> date = new("--date") { Description = "the lesson's date, as printed", HelpName = "TEXT" };
    private readonly Option<bool> letter = new("--letter") { Description = "US Letter instead of A4" };
    private readonly Option<bool> large = new("--large") { Description = "letters of 18 point, for those who see little" };
    private readonly Option<string?> tint = new("--tint") { Description = "colour of the sheet as six hexadecimal digits, such as fff4d6", HelpName = "RRGGBB" };
    private readonly Option<bool> json = JsonOption.Create();

    /// <summary>All of them, in the order of the help page.</summary>
    public IReadOnlyList<Option> All => [students, seed, @out, truth, odd, level, format, @class, date, letter, large, tint, json];

    /// <summary>What was said.</summary>
    public CatchUpWords Words(ParseResult result) => new()
    {
        Students = result.GetValue(students),
        Seed = (ulong?)result.GetValue(seed),
        Out = result.GetValue(@out),
        Truth = result.GetValue(truth),
        OddShare = result.GetValue(odd) ?? Practicals.CatchUp.CatchUpOptions.UsualOddShare,
        Level = result.GetValue(level) ?? "standard",
        Formats = result.GetValue(format) is { Length: > 0 } some ? [.. some.Distinct()] : ["docx", "html"],
        ClassName = result.GetValue(@class),
        Date = result.GetValue(date),
        IsLetter = result.GetValue(letter),
        IsLarge = result.GetValue(large),
        Tint = result.GetValue(tint),
        AsJson = result.GetValue(json),
    };
}
