using Calx.Papers.Charts;

namespace Calx.Papers.Drawings;

/// <summary>Stands labels in two columns for given ends of their lines.</summary>
internal static class LabelColumns
{
    /// <summary>The labels, as near to the height of their ends as they fit, in the order of those heights. Where two lines of
    /// one side cross, every label there is given the height of the highest, and two whose lines cross change places until none
    /// do: each change makes both lines together shorter (a triangle's side is shorter than the other two), and there is no end
    /// to shortening but an arrangement without crossings.</summary>
    /// <param name="ends">For each part the side of its label, the end of its line, and the label's height with the space to
    /// the next.</param>
    /// <param name="frame">Where labels may stand.</param>
    public static Label[] Stand(IReadOnlyList<(bool Left, Spot End, double Height)> ends, LabelFrame frame)
    {
        var labels = new Label[ends.Count];
        foreach (bool left in new[] { true, false })
        {
            int[] here = [.. Enumerable.Range(0, ends.Count).Where(i => ends[i].Left == left)];
            Spread([.. here.Select(i => ends[i].Height)]);
            if (AreCrossed(labels, here))
            {
                double highest = here.Max(i => ends[i].Height);
                Spread([.. here.Select(_ => highest)]);
                Untangle(labels, here);
            }

            void Spread(double[] heights)
            {
                double[] places = LabelColumn.Spread([.. here.Select(i => ends[i].End.Y)], heights, frame.Top, frame.Bottom);
                for (int k = 0; k < here.Length; k++)
                {
                    labels[here[k]] = new Label(here[k], left, new Spot(left ? frame.Left : frame.Right, places[k]), ends[here[k]].End);
                }
            }
        }

        return labels;
    }

    private static bool AreCrossed(Label[] labels, int[] here)
    {
        for (int i = 0; i < here.Length; i++)
        {
            for (int j = i + 1; j < here.Length; j++)
            {
                if (Plane.Meet(labels[here[i]].Leader, labels[here[j]].Leader))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static void Untangle(Label[] labels, int[] here)
    {
        bool crossed = true;
        while (crossed)
        {
            crossed = false;
            for (int i = 0; i < here.Length; i++)
            {
                for (int j = i + 1; j < here.Length; j++)
                {
                    (Label a, Label b) = (labels[here[i]], labels[here[j]]);
                    double now = a.From.To(a.End) + b.From.To(b.End);
                    if (Plane.Meet(a.Leader, b.Leader) && a.From.To(b.End) + b.From.To(a.End) < now - 1e-9)
                    {
                        labels[here[i]] = a with { From = b.From };
                        labels[here[j]] = b with { From = a.From };
                        crossed = true;
                    }
                }
            }
        }
    }
}
