using System.Globalization;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

// Alone, so that the processor time of the process is that of the test, however busy the machine is.
[CollectionDefinition("Large classes", DisableParallelization = true)]
public sealed class LargeClasses;

[Collection("Large classes")]
public class LargeClassTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Ten_thousand_groups_are_read_within_half_a_second_and_memory_grows_with_them(bool wide)
    {
        Read(wide, 200);
        (long few, _) = Read(wide, 2_500);
        (long many, double milliseconds) = Read(wide, 10_000);
        Assert.True(milliseconds < 500, $"{milliseconds} ms of processor time");
        // Four times the groups, and no more than four and a half times the memory.
        Assert.True(many < 4.5 * few, $"{few} and {many} bytes");
    }

    private static (long Bytes, double Milliseconds) Read(bool wide, int groups)
    {
        CellTable table = wide ? Wide(groups) : Long(groups);
        long before = GC.GetAllocatedBytesForCurrentThread();
        TimeSpan start = Environment.CpuUsage.TotalTime;
        ClassReadings read = Bench.Read([table]);
        double milliseconds = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
        Assert.Equal(groups, read.Groups.Count);
        return (GC.GetAllocatedBytesForCurrentThread() - before, milliseconds);
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
