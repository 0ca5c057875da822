using System.Text;
using Calx.Papers.Tables;

namespace Calx.Papers.Tests.Tables;

public class CsvTests
{
    public static TheoryData<string, string, string, string> Matrix()
    {
        TheoryData<string, string, string, string> matrix = [];
        foreach (string encoding in new[] { "utf-8", "utf-8 marked", "utf-16", "utf-16 marked", "utf-16BE", "utf-16BE marked", "windows-1252" })
        {
            foreach (string separator in new[] { ",", ";", "\t" })
            {
                foreach (string line in new[] { "\n", "\r\n", "\r" })
                    matrix.Add(encoding, separator, line, separator == "," ? "." : ",");
            }
        }
        return matrix;
    }

    [Theory]
    [MemberData(nameof(Matrix))]
    public void Every_encoding_separator_and_line_end_is_read(string encoding, string separator, string line, string point)
    {
        string text = string.Join(line, "Group|empty|after|Notes", "Zoé|30.10|30.49|smoke; glow, 700 °C", "", "Ash|28.77|29.18|", "")
            .Replace("30.10", $"30{point}10", StringComparison.Ordinal).Replace("29.18", $"29{point}18", StringComparison.Ordinal)
            .Replace("smoke; glow, 700", separator == "\t" ? "smoke; glow, 700" : "\"smoke; glow, 700\"", StringComparison.Ordinal)
            .Replace('|', separator[0]);
        TableFile.Opened file = Opening.Read(Bytes(text, encoding));
        Assert.Equal(
            ["1: A=Group B=empty C=after D=Notes", $"2: A=Zoé B=30{point}10 C=30.49 D=smoke; glow, 700 °C", $"4: A=Ash B=28.77 C=29{point}18"],
            Opening.Rows(file).Select(r => r.Replace("\"", "", StringComparison.Ordinal)));
        Assert.Contains(encoding.Split(' ')[0], file.Format, StringComparison.OrdinalIgnoreCase);
    }

    private static byte[] Bytes(string text, string encoding)
    {
        Encoding used = encoding.Split(' ')[0] == "windows-1252"
            ? CodePagesEncodingProvider.Instance.GetEncoding(1252)!
            : Encoding.GetEncoding(encoding.Split(' ')[0]);
        byte[] bytes = used.GetBytes(text);
        return encoding.EndsWith("marked", StringComparison.Ordinal) ? [.. used.GetPreamble(), .. bytes] : bytes;
    }

    [Fact]
    public void Decimal_commas_among_semicolons_are_no_separators()
    {
        TableFile.Opened file = Opening.Read("Group;empty;after\n1;30,10;30,49\n2;28,77;29,18\n");
        Assert.Equal(["1: A=Group B=empty C=after", "2: A=1 B=30,10 C=30,49", "3: A=2 B=28,77 C=29,18"], Opening.Rows(file));
    }

    [Fact]
    public void Decimal_commas_in_quotation_marks_among_commas_are_no_separators()
    {
        TableFile.Opened file = Opening.Read("Group,Mass of Mg,gain\nA,\"0,24\",\"0,15\"\n");
        Assert.Equal(["1: A=Group B=Mass of Mg C=gain", "2: A=A B=0,24 C=0,15"], Opening.Rows(file));
    }

    [Fact]
    public void A_title_a_ragged_row_and_semicolons_in_a_remark_leave_commas_the_separator()
    {
        TableFile.Opened file = Opening.Read("Class 9b; Monday; balance B\n\nGroup,empty,after,Notes\nAsh,30.10,30.49,smoke; glow; lid\nElm,28.77\n");
        Assert.Equal(["1: A=Class 9b; Monday; balance B", "3: A=Group B=empty C=after D=Notes", "4: A=Ash B=30.10 C=30.49 D=smoke; glow; lid", "5: A=Elm B=28.77"],
            Opening.Rows(file));
    }

    [Fact]
    public void A_group_a_name_and_a_decimal_comma_are_parted_by_semicolons()
    {
        TableFile.Opened file = Opening.Read("Group;Reading;Value\nAsh;empty;30,10\nAsh;after;30,49\n");
        Assert.Equal("2: A=Ash B=empty C=30,10", Opening.Rows(file)[1]);
    }

    [Fact]
    public void A_declared_separator_is_obeyed_and_rows_keep_their_numbers()
    {
        TableFile.Opened file = Opening.Read("sep=;\nGroup;after\nAsh;30,49\n");
        Assert.Equal(["2: A=Group B=after", "3: A=Ash B=30,49"], Opening.Rows(file));
    }

    [Fact]
    public void Quotation_marks_are_read_as_spreadsheets_write_them()
    {
        TableFile.Opened file = Opening.Read("Group,Notes,after\n\"Ash, Elm\",\"said \"\"hot\"\"\",30.49\n\"two\nlines\",x,30.50\n3\" dish,y,30.51\nlast,z,30.52");
        Assert.Equal(["2: A=Ash, Elm B=said \"hot\" C=30.49", "3: A=two\nlines B=x C=30.50", "4: A=3\" dish B=y C=30.51", "5: A=last B=z C=30.52"],
            Opening.Rows(file)[1..]);
    }

    [Fact]
    public void A_quotation_mark_never_closed_is_told_with_its_row()
    {
        TableFile.Fault fault = Opening.Refused("Group,after\nAsh,30.49\n\"Elm,30.50\nOak,30.51\n"u8.ToArray());
        Assert.Equal(TableFaultKind.Damaged, fault.Kind);
        Assert.StartsWith("row 3: ", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_many_rows_columns_or_letters_are_told()
    {
        TableLimits tight = new(mostRows: 3, mostColumns: 3, longestCell: 10);
        Assert.Contains("more than 3 rows", Opening.Refused("a,b\nc,d\ne,f\ng,h"u8.ToArray(), tight).Reason, StringComparison.Ordinal);
        Assert.Contains("row 2 has more than 3 columns", Opening.Refused("a,b\nc,d,e,f"u8.ToArray(), tight).Reason, StringComparison.Ordinal);
        Assert.Contains("more than 10 characters", Opening.Refused("a,b\nc,hello worlds"u8.ToArray(), tight).Reason, StringComparison.Ordinal);
    }
}
