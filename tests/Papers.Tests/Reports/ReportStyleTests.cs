using Calx.Papers.Charts;
using Calx.Papers.Reports;

namespace Calx.Papers.Tests.Reports;

public class ReportStyleTests
{
    [Fact]
    public void The_sheet_for_an_app_asks_for_no_file_and_brings_colours_for_light_dark_and_print()
    {
        string sheet = ReportStyle.ScreenSheet;

        Assert.DoesNotContain("url(", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("@font-face", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", sheet, StringComparison.Ordinal);
        Assert.Contains(ChartStyle.Dark, sheet, StringComparison.Ordinal);
        Assert.Contains("@media print", sheet, StringComparison.Ordinal);
        Assert.Equal(sheet.Count(c => c == '{'), sheet.Count(c => c == '}'));
    }

    // Rules for reports must not change the page around them.
    [Fact]
    public void Every_rule_of_the_sheet_is_for_a_report_or_a_chart()
    {
        IEnumerable<string> selectors = ReportStyle.ScreenSheet.Split('}')
            .Select(rule => rule[..Math.Max(0, rule.LastIndexOf('{'))])
            .Select(text => text[(text.LastIndexOf("*/", StringComparison.Ordinal) is var end && end >= 0 ? end + 2 : 0)..])
            .Select(text => text[(text.LastIndexOf('{') + 1)..].Trim()).Where(text => text.Length > 0);

        Assert.All(selectors, s => Assert.Matches(@"^(:root|\.report\b|:where\(\.report\)|\.chart\b|@page wide)", s));
    }

    [Fact]
    public void The_fonts_are_web_fonts_of_two_weights()
    {
        byte[] regular = Bytes(ReportFonts.Regular());
        byte[] bold = Bytes(ReportFonts.Bold());

        Assert.Equal("wOF2"u8.ToArray(), regular[..4]); // WOFF File Format 2.0, 4.1: the signature.
        Assert.Equal("wOF2"u8.ToArray(), bold[..4]);
        Assert.NotEqual(regular, bold);
    }

    private static byte[] Bytes(Stream font)
    {
        using (font)
        using (var bytes = new MemoryStream())
        {
            font.CopyTo(bytes);
            return bytes.ToArray();
        }
    }
}
