using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;

namespace Calx.Practicals.Planning.Amounts;

/// <summary>How often groups and classes came to each conclusion.</summary>
internal sealed class ConclusionTally(int conclusions)
{
    private readonly int[] groupRight = new int[conclusions];
    private readonly int[] groupWrong = new int[conclusions];
    private readonly int[] classRight = new int[conclusions];
    private readonly int[] classWrong = new int[conclusions];

    public void Group(int conclusion, Bearing bearing)
    {
        groupRight[conclusion] += bearing == Bearing.Right ? 1 : 0;
        groupWrong[conclusion] += bearing == Bearing.Wrong ? 1 : 0;
    }

    public void Class(int conclusion, Bearing bearing)
    {
        classRight[conclusion] += bearing == Bearing.Right ? 1 : 0;
        classWrong[conclusion] += bearing == Bearing.Wrong ? 1 : 0;
    }

    public double LargestError(int classes)
    {
        double largest = 0;
        foreach (int count in classRight.Concat(classWrong))
        {
            largest = Math.Max(largest, Share.Of(count, classes).StandardError);
        }

        return largest;
    }

    public ConclusionChance Chance(ConclusionDefinition conclusion, int r, int classes, int groups) => new(
        conclusion,
        Share.Of(groupRight[r], groups),
        Share.Of(groupWrong[r], groups),
        Share.Of(classRight[r], classes),
        Share.Of(classWrong[r], classes));
}
