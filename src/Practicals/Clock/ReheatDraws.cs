using Calx.Measurement.Distributions;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Clock;

/// <summary>How often each group heats: by the trade's rule on readings drawn from the model, each group's on the balance that it
/// was given. One belongs to one thread.</summary>
internal sealed class ReheatDraws
{
    /// <summary>Streams of random numbers from here on are those of lessons: no group of a class or of a prediction has one.</summary>
    private const ulong FirstStream = 1UL << 40;

    private const int MostOfOneGroup = 64;

    private readonly GroupDrawer[] drawers;
    private readonly GroupBench[] benches;
    private readonly int heatings;

    /// <summary>Takes the drawers of a plan.</summary>
    /// <param name="drawers">One for each balance.</param>
    /// <param name="heatings">How often every group heats.</param>
    public ReheatDraws(GroupDrawer[] drawers, int heatings)
    {
        this.drawers = drawers;
        benches = [.. drawers.Select(d => new GroupBench(d))];
        this.heatings = heatings;
    }

    /// <summary>Heatings of one trial of a group.</summary>
    public int Of(ulong seed, int lesson, int group, int trial)
    {
        if (heatings == 1)
        {
            return 1;
        }

        int at = group % drawers.Length;
        if (!drawers[at].ByRule)
        {
            return heatings;
        }

        ulong number = ((ulong)lesson * PlanSettings.MostGroups * MostOfOneGroup) + (ulong)((group * MostOfOneGroup) + trial);
        var random = new RandomStream(seed, FirstStream + number);
        while (!benches[at].Draw(drawers[at].NextSet(random), random))
        {
            // The bench has no answer to some numbers, such as nothing over nothing: another group takes its place.
        }

        return benches[at].View.Rounds;
    }
}
