using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

public class ResolutionTests
{
    [Fact]
    public void The_most_decimals_of_a_column_are_the_resolution()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n1|30.1|30.34|30.4\n2|28.77|29.02|29.1");
        Assert.Equal(0.01m, read.Balance.ResolutionInGrams);
        Assert.Equal(0.1m, read.Balance.ResolutionOf("after"));
        Assert.Equal(BalanceOrigin.MostDecimals, read.Balance.ResolutionOrigin);
        Assert.Equal(0.007, read.Balance.RepeatabilityInGrams, 12);
        Assert.Equal(BalanceOrigin.Judgement, read.Balance.RepeatabilityOrigin);
    }

    [Fact]
    public void What_the_teacher_gives_goes_before_what_is_found()
    {
        ClassReadings read = Bench.Read("Group|empty|after\n1|30.1|30.4", new BalanceOptions(0.02m, 0.01));
        Assert.Equal(0.02m, read.Balance.ResolutionInGrams);
        Assert.Equal(0.02m, read.Balance.ResolutionOf("after"));
        Assert.Equal(BalanceOrigin.Given, read.Balance.ResolutionOrigin);
        Assert.Equal(0.5, read.Balance.RepeatabilityInDivisions, 12);
    }

    [Fact]
    public void A_dropped_zero_in_a_text_file_is_kept_as_written_and_asked_about()
    {
        ClassReadings read = Bench.Read("Group|empty|after\n1|15.12|15.55\n2|15.1|15.61");
        Assert.Equal("15.1", read.Groups[1].Find("empty")!.Value.ToString());
        Assert.Equal("B3: '15.1' has fewer decimals than the other readings of its column: a dropped zero?", Assert.Single(read.Notes).ToString());
    }

    [Fact]
    public void Many_dropped_zeros_are_told_once()
    {
        string rows = string.Concat(Enumerable.Range(1, 6).Select(i => $"\n{i}|30.{i}|30.45"));
        ClassReadings read = Bench.Read("Group|empty|after\n0|30.12|30.45" + rows);
        Assert.Equal("column B, rows 3, 4, 5, 6, 7, 8: fewer decimals than the rest of the column: dropped zeros?", Assert.Single(read.Notes).Text);
    }

    [Fact]
    public void Zeros_dropped_by_a_General_format_are_given_back_and_are_no_slip()
    {
        CellTable general = Bench.Table("Group|empty|before|after\n1|30.1|30.34|30.5\n2|28.77|29|29.2", "", decimalsShown: false);
        ClassReadings read = Bench.Read([general]);
        Assert.Equal(["empty 30.10, before 30.34, after 30.50", "empty 28.77, before 29.00, after 29.20"], read.Groups.Select(Bench.Of));
        Assert.All(read.Groups.SelectMany(g => g.Readings), r => Assert.Equal(0.01m, r.LastDigit));
        Assert.Empty(read.Notes);
    }

    [Fact]
    public void A_long_column_of_one_decimal_under_a_General_format_was_read_to_one_decimal()
    {
        string rows = string.Concat(Enumerable.Range(1, 8).Select(i => $"\n{i}|30.1{i}|30.{i}"));
        ClassReadings read = Bench.Read([Bench.Table("Group|empty|after" + rows, "", decimalsShown: false)]);
        Assert.Equal("30.1", read.Groups[0].Find("after")!.Value.ToString());
    }

    [Fact]
    public void One_reading_with_more_decimals_than_all_others_sets_the_resolution_and_is_asked_about()
    {
        string rows = string.Concat(Enumerable.Range(1, 10).Select(i => $"\n{i}|30.1{i % 10}|30.4{i % 10}"));
        ClassReadings read = Bench.Read("Group|empty|after\n0|30.123|30.45" + rows);
        Assert.Equal(0.001m, read.Balance.ResolutionInGrams);
        Assert.Equal(0.01m, read.Balance.ResolutionOf("after"));
        Assert.Equal("30.123", read.Groups[0].Find("empty")!.Value.ToString());
        Assert.Contains("B2: '30.123' alone has more decimals", Assert.Single(read.Notes).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_is_asked_where_a_format_drops_zeros()
    {
        string rows = string.Concat(Enumerable.Range(1, 10).Select(i => $"\n{i}|30.1{i % 10}|30.4{i % 10}"));
        ClassReadings read = Bench.Read([Bench.Table("Group|empty|after\n0|30.123|30.45" + rows, "", decimalsShown: false)]);
        Assert.Contains("'30.123' alone has more decimals", Assert.Single(read.Notes).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_balance_has_its_own_resolution()
    {
        ClassReadings read = Bench.Read("Group|Balance|empty|after\n1|A|30.12|30.45\n2|B|28.771|29.182\n3|A|30.13|30.44");
        Assert.Empty(read.Notes);
        Assert.Equal("A", read.Groups[0].Find("empty")!.Balance);
        Assert.Equal(0.01m, read.Groups[0].Find("empty")!.LastDigit);
        Assert.Equal(0.001m, read.Groups[1].Find("empty")!.LastDigit);
    }
}
