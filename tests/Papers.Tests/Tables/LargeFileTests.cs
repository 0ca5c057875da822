using System.Globalization;
using System.Text;
using Calx.Papers.Tables;
using static Calx.Papers.Tests.Tables.MadeWorkbook;

namespace Calx.Papers.Tests.Tables;

public class LargeFileTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Memory_grows_no_faster_than_the_rows(bool workbook)
    {
        Allocated(workbook, 1_000);
        long few = Allocated(workbook, 2_500);
        long many = Allocated(workbook, 10_000);
        // Four times the rows, and no more than four and a half times the memory. How long it takes is for bench/.
        Assert.True(many < 4.5 * few, $"{few} and {many} bytes");
    }

    private static long Allocated(bool workbook, int groups)
    {
        byte[] bytes = workbook ? Workbook(groups) : Text(groups);
        long before = GC.GetAllocatedBytesForCurrentThread();
        TableFile.Opened file = Opening.Read(bytes);
        Assert.Equal(groups + 1, file.Sheets[0].Rows.Count);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static byte[] Text(int groups)
    {
        StringBuilder text = new("Group,empty,before,after,Notes\n");
        for (int i = 0; i < groups; i++)
            text.Append(CultureInfo.InvariantCulture, $"Group {i},{Mass(30, i)},{Mass(31, i)},{Mass(32, i)},white smoke\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static byte[] Workbook(int groups) => Of(("Class", null,
    [
        Row(1, MadeWorkbook.Text("A1", "Group"), MadeWorkbook.Text("B1", "empty"), MadeWorkbook.Text("C1", "before"), MadeWorkbook.Text("D1", "after")),
        .. Enumerable.Range(2, groups).Select(i => Row((uint)i, MadeWorkbook.Text($"A{i}", $"Group {i}"), Number($"B{i}", Mass(30, i), TwoDecimals),
            Number($"C{i}", Mass(31, i), TwoDecimals), Number($"D{i}", Mass(32, i), TwoDecimals))),
    ]));

    private static string Mass(int whole, int hundredths) => (whole + hundredths % 100 / 100m).ToString(CultureInfo.InvariantCulture);
}
