using System.Text.RegularExpressions;

namespace Calx.Papers.Tests.Texts;

/// <summary>Texts stand in Texts, not in code: otherwise a second language would miss them.</summary>
public sealed partial class LiteralTests
{
    /// <summary>Folders whose texts are kept apart from the code.</summary>
    private static readonly string[] Folders = ["Handouts", "Slips", "Spreadsheets", "SheetCheck", "Plans", "Reports", "Charts", "Drawings", "Tables", "Week", "Marks"];

    /// <summary>Types that hold style sheets, or the English words by which a worksheet is read.</summary>
    private static readonly string[] Apart = ["ReportStyle", "ChartStyle", "CautionRule"];

    /// <summary>What looks like a text and is none that a reader of papers meets.</summary>
    private static readonly string[] Named =
    [
        // Told to a programmer.
        "There is no such paper.", "There is no such function.", " is no part of a formula.", " is no line of text.", " to ", " is expected.", " by ",
        " cells are expected.", "The file ", " is not in the program.", " does not stand by itself.", "The picture could not be drawn.",
        "Elements are more than ", " deep.", "Rows are out of order.", "Cells are out of order.", "A shared text is missing.",
        // Names that file formats and fonts have.
        "Calibri", "Normal", "Heading", "Title", "Fallback", "General", "yyyy-mm-dd hh:mm",
        // Symbols, and how readings are called by the practicals.
        "Ar", "Mr", "Mass ",
    ];

    [Fact]
    public void No_text_stands_in_the_code_of_papers()
    {
        string[] found =
        [
            .. from type in Compiled.Types(TextTopic.Papers)
               where Folders.Any(f => $"{type.Namespace}.".StartsWith($"Calx.Papers.{f}.", StringComparison.Ordinal)) && !Apart.Contains(type.Name)
               from literal in Compiled.Literals(type)
               where literal != type.Name && !Named.Contains(literal) && IsText(literal)
               select $"{type.FullName}: {literal}",
        ];
        Assert.True(found.Length == 0, string.Join('\n', found));
        // The reader of instructions does see what stands in code.
        Assert.Contains("Calibri", Compiled.Types(TextTopic.Papers).Where(t => t.Name == "LookTable").SelectMany(Compiled.Literals));
    }

    [Theory]
    [InlineData("What you do", true)]
    [InlineData("Balance", true)]
    [InlineData("<p class=\"quiet\">how it goes</p>", true)]
    [InlineData(" and ", true)]
    [InlineData("<p class=\"quiet\">", false)]
    [InlineData("\" aria-hidden=\"true\"></div>\n", false)]
    [InlineData(" rowspan=\"2\"", false)]
    [InlineData("student-sheet-", false)]
    [InlineData("0.#####", false)]
    public void A_text_is_told_from_markup_and_names(string literal, bool expected) => Assert.Equal(expected, IsText(literal));

    /// <summary>Two words; or one with a capital; or one between blanks.</summary>
    private static bool IsText(string literal) => Words().IsMatch(Markup().Replace(literal, "§"));

    [GeneratedRegex(@"<[^>]*(>|$)|^[^<>]*>|&\w+;| [\w-]+=""[^""]*""?", RegexOptions.CultureInvariant)]
    private static partial Regex Markup();

    [GeneratedRegex(@"[\p{L}’']{2,}[,.:;?!]? [\p{L}’']{2,}|^[A-Z][a-z]+[.:]?$| [\p{L}]{2,} |^[\p{L}]{2,}[:?]? $|^ \p{L}{2,}", RegexOptions.CultureInvariant)]
    private static partial Regex Words();
}
