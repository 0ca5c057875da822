using System.Globalization;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

public class LargeClassTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Memory_grows_no_faster_than_the_groups(bool wide)
    {
        Allocated(wide, 200);
        long few = Allocated(wide, 2_500);
        long many = Allocated(wide, 10_000);
        // Four times the groups, and no more than four and a half times the memory. How long it takes is for bench/.
        Assert.True(many < 4.5 * few, $"{few} and {many} bytes");
    }

    private static long Allocated(bool wide, int groups)
    {
        CellTable table = wide ? Wide(groups) : Long(groups);
        long before = GC.GetAllocatedBytesForCurrentThread();
        ClassReadings read = Bench.Read([table]);
        Assert.Equal(groups, read.Groups.Count);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static CellTable Wide(int groups) => new("", [
        CellRow.Of(1, "Group", "empty", "before", "after", "after 2", "Notes"),
        .. Enumerable.Range(2, groups).Select(i => CellRow.Of(i, "Group " + i, Mass(30, i), Mass(31, i), Mass(32, i), Mass(32, i), "white smoke; glow"))]);

    private static CellTable Long(int groups) => new("", [
        CellRow.Of(1, "Group", "Reading", "Value"),
        .. Enumerable.Range(0, 3 * groups).Select(i => CellRow.Of(i + 2, "Group " + i / 3, new[] { "empty", "before heating", "Mass after heating / g" }[i % 3],
            Mass(30 + i % 3, i)))]);

    private static string Mass(int whole, int i) => (whole + i % 100 / 100m).ToString("0.00", CultureInfo.InvariantCulture);
}
