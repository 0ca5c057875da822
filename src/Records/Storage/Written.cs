using System.Data.Common;
using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Records.Storage;

/// <summary>Times and numbers as the texts that are kept, and back. A time keeps the offset with which it was given.</summary>
internal static class Written
{
    private const string Day = "yyyy-MM-dd";

    public static string Time(DateTimeOffset time) => time.ToString("O", CultureInfo.InvariantCulture);

    public static DateTimeOffset TimeOf(string text) => DateTimeOffset.ParseExact(text, "O", CultureInfo.InvariantCulture);

    public static string Date(DateOnly date) => date.ToString(Day, CultureInfo.InvariantCulture);

    public static DateOnly DateOf(string text) => DateOnly.ParseExact(text, Day, CultureInfo.InvariantCulture);

    public static WrittenNumber NumberOf(string text) =>
        WrittenNumber.TryParse(text, out WrittenNumber number) ? number : throw new FormatException($"'{text}' is no number.");

    public static long Flag(bool value) => value ? 1 : 0;

    public static DateTimeOffset Time(this DbDataReader row, int column) => TimeOf(row.GetString(column));

    public static RecordId Id(this DbDataReader row, int column) => RecordId.Parse(row.GetString(column));

    public static string? TextOrNull(this DbDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);

    public static int Whole(this DbDataReader row, int column) => checked((int)row.GetInt64(column));

    public static bool Flag(this DbDataReader row, int column) => row.GetInt64(column) != 0;
}
