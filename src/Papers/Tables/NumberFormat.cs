using System.Globalization;

namespace Calx.Papers.Tables;

/// <summary>
/// A number format of a spreadsheet, as far as it decides which digits are shown (ECMA-376 part 1, 18.8.30 and 18.8.31):
/// decimals, percent, exponent, units in quotation marks, dates. Grouping of thousands is left out of the text, because
/// the number is known to be one.
/// </summary>
internal sealed class NumberFormat
{
    private readonly IReadOnlyList<FormatSection> sections;

    private NumberFormat(IReadOnlyList<FormatSection> sections) => this.sections = sections;

    /// <summary>The format of a cell without one.</summary>
    public static NumberFormat General { get; } = Parse("General");

    /// <summary>Whether trailing zeros would be seen if the format wanted them: not under General or <c>0.##</c>.</summary>
    public bool ShowsDecimals => sections[0].ShowsDecimals;

    /// <summary>Reads a format code; one that is not understood shows numbers as General does.</summary>
    public static NumberFormat Parse(string code) => new([.. FormatSection.Split(code).Select(FormatSection.Parse)]);

    /// <summary>The format that has this number without being written in the file.</summary>
    public static NumberFormat? BuiltIn(int id) => id switch
    {
        0 => General,
        1 => Parse("0"),
        2 => Parse("0.00"),
        3 or 37 or 38 => Parse("#,##0"),
        4 or 39 or 40 => Parse("#,##0.00"),
        9 => Parse("0%"),
        10 => Parse("0.00%"),
        11 => Parse("0.00E+00"),
        >= 14 and <= 17 => Parse("yyyy-mm-dd"),
        (>= 18 and <= 21) or (>= 45 and <= 47) => Parse("hh:mm:ss"),
        22 => Parse("yyyy-mm-dd hh:mm"),
        48 => Parse("##0.0E+0"),
        49 => Parse("@"),
        _ => null,
    };

    /// <summary>The text that the cell shows.</summary>
    /// <param name="stored">The number as the file has it.</param>
    /// <param name="from1904">Whether days are counted from 1904.</param>
    public string Show(string stored, bool from1904)
    {
        if (!double.TryParse(stored, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            return stored;
        FormatSection section = number < 0 && sections.Count > 1 ? sections[1]
            : number == 0 && sections.Count > 2 ? sections[2] : sections[0];
        if (section.IsDate)
            return Date(number, from1904, section.HasDay) ?? stored;
        // Fifteen significant digits are what spreadsheets show at most; the conversion rounds to them.
        if (Math.Abs(number) >= 1e15 || (number != 0 && Math.Abs(number) < 1e-15))
            return stored;
        return section.Show((decimal)number);
    }

    private static string? Date(double serial, bool from1904, bool hasDay)
    {
        const double daysTo1904 = 1462;
        double days = from1904 ? serial + daysTo1904 : serial;
        if (days is not (>= 0 and < 2_958_466))
            return null;
        DateTime date = DateTime.FromOADate(days);
        string time = date.ToString(date.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);
        string day = date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return !hasDay ? time : date.TimeOfDay == TimeSpan.Zero ? day : $"{day} {time}";
    }
}
