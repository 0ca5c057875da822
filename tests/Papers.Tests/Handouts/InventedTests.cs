using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;

namespace Calx.Papers.Tests.Handouts;

/// <summary>Papers of a class that is made up say so on every page: the running foot stands on each.</summary>
public sealed class InventedTests
{
    [Fact]
    public void The_foot_of_every_paper_says_it_and_of_a_real_class_none()
    {
        foreach (bool isInvented in (bool[])[true, false])
        {
            var setting = new PaperSetting(Planned.Easy, PaperOccasion.Unsaid with { ClassName = "9F", IsInvented = isInvented }, null, isChecked: true);
            Assert.All(
                PaperSet.Of(setting, Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>()).Documents,
                p => Assert.Equal(isInvented, p.Heads.Foot.Contains("class and data are invented", StringComparison.Ordinal)));
        }
    }
}
