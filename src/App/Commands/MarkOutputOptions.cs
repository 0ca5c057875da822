using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Input;

namespace Calx.App.Commands;

/// <summary>The options of <c>calx mark</c> that say what is written besides the answer.</summary>
internal sealed class MarkOutputOptions
{
    private readonly Option<string?> xlsx = new("--xlsx") { Description = "also write a workbook: marks, every answer, the class", HelpName = "FILE" };
    private readonly Option<string?> slips = new("--slips") { Description = "also write feedback slips to print and cut apart; the name ends in .html, .docx or .pdf", HelpName = "FILE" };
    private readonly Option<string?> roster = new("--roster") { Description = "also write the totals for a school system (OneRoster CSV): a new FILE.zip, or a new folder; needs --class and --date", HelpName = "FILE" };
    private readonly Option<string?> @class = new("--class") { Description = "the class, as printed", HelpName = "NAME" };
    private readonly Option<string?> date = new("--date") { Description = "the lesson's day, such as 2026-11-26; otherwise today", HelpName = "DATE" };
    private readonly Option<string?> school = new("--school-name") { Description = "the school, for --roster", HelpName = "NAME" };
    private readonly Option<string?> classId = new("--class-id") { Description = "what the school system calls the class, for --roster", HelpName = "ID" };
    private readonly Option<string?> termId = new("--term-id") { Description = "what the school system calls the grading period, for --roster", HelpName = "ID" };
    private readonly Option<bool> letter = new("--letter") { Description = "US Letter instead of A4" };
    private readonly Option<bool> large = new("--large") { Description = "letters of 18 point, for those who see little" };
    private readonly Option<string?> tint = new("--tint") { Description = "colour of the slips as six hexadecimal digits, such as fff4d6", HelpName = "RRGGBB" };

    /// <summary>All of them, in the order of the help page.</summary>
    public IReadOnlyList<Option> All => [xlsx, slips, roster, @class, date, school, classId, termId, letter, large, tint];

    /// <summary>What was said.</summary>
    public MarkOutputWords Words(ParseResult result) => new(result.GetValue(xlsx), result.GetValue(slips), result.GetValue(roster))
    {
        ClassName = result.GetValue(@class), Date = result.GetValue(date), School = result.GetValue(school),
        ClassId = result.GetValue(classId), TermId = result.GetValue(termId),
        IsLetter = result.GetValue(letter), IsLarge = result.GetValue(large), Tint = result.GetValue(tint),
    };
}
