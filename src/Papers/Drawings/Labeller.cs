namespace Calx.Papers.Drawings;

/// <summary>Chooses for each part the side of its label and the spot where its line ends: no two lines cross or come close,
/// few lines of other parts are crossed, and lines are short and nearly level.</summary>
internal sealed class Labeller(IReadOnlyList<Target> targets, LabelFrame frame)
{
    /// <summary>Two lines nearer than this, in the picture's units, look like one.</summary>
    public const double Clear = 5;

    private const double CrossedLines = 1e6;
    private const double CloseLines = 3e3;
    private const double EndNearOther = 150;
    private const double CrossedWall = 16;
    private const double Near = 3;
    private const double Step = 4;
    private const double Alongside = 5;
    private const int MostCounted = 3;
    private const double PerUnit = 0.25;
    private const double PerUnitOfSlope = 0.9;
    private const double AlmostLevel = 6;
    private const double Level = 0.3;
    private const double Unbalanced = 14;

    // Whether a line starts left or right decides most; the search begins from each of these and keeps the best.
    private static readonly Func<int, bool>[] Starts = [_ => false, _ => true, i => i % 2 == 0, i => i % 2 == 1, i => i % 3 == 0];

    private readonly Dictionary<(int, bool, Spot, double), double> alone = [];

    /// <summary>The labels, one for each part, in their order.</summary>
    public Label[] Place()
    {
        Label[]? best = null;
        double least = double.PositiveInfinity;
        foreach (Func<int, bool> start in Starts)
        {
            (Label[] found, double cost) = Improved([.. targets.Select((_, i) => (start(i), 0))]);
            if (cost < least)
            {
                (best, least) = (found, cost);
            }
        }

        return best!;
    }

    /// <summary>Changes one choice at a time for as long as that makes the whole better.</summary>
    private (Label[] Labels, double Cost) Improved((bool Left, int Spot)[] choice)
    {
        Label[] labels = Stand(choice);
        double cost = Cost(labels);
        bool better = true;
        while (better)
        {
            better = false;
            for (int i = 0; i < choice.Length; i++)
            {
                for (int option = 0; option < 2 * targets[i].Spots.Count; option++)
                {
                    (bool, int) old = choice[i];
                    choice[i] = (option % 2 == 0, option / 2);
                    Label[] tried = Stand(choice);
                    double triedCost = Cost(tried);
                    if (triedCost < cost - 1e-9)
                    {
                        (labels, cost, better) = (tried, triedCost, true);
                    }
                    else
                    {
                        choice[i] = old;
                    }
                }
            }
        }

        return (labels, cost);
    }

    private Label[] Stand((bool Left, int Spot)[] choice) =>
        LabelColumns.Stand([.. choice.Select((c, i) => (c.Left, targets[i].Spots[c.Spot], targets[i].Height))], frame);

    private double Cost(Label[] labels)
    {
        double cost = Unbalanced * Math.Abs(labels.Count(l => l.Left) - labels.Count(l => !l.Left));
        for (int i = 0; i < labels.Length; i++)
        {
            cost += Alone(labels[i]);
            for (int j = i + 1; j < labels.Length; j++)
            {
                double apart = Plane.Apart(labels[i].Leader, labels[j].Leader);
                cost += apart <= 0 ? CrossedLines : apart < Clear ? CloseLines : 0;
            }
        }

        return cost;
    }

    /// <summary>What one line costs by itself.</summary>
    private double Alone(Label label)
    {
        var key = (label.Target, label.Left, label.End, label.From.Y);
        if (!alone.TryGetValue(key, out double cost))
        {
            cost = (PerUnit * label.From.To(label.End)) + Slope(label.From.Y - label.End.Y) + Crossed(label);
            alone[key] = cost;
        }

        return cost;
    }

    /// <summary>A line that is almost level looks like a slip of the ruler; a steep one is hard to follow.</summary>
    private static double Slope(double rise) => Math.Abs(rise) < Level ? 0 : AlmostLevel + (PerUnitOfSlope * Math.Abs(rise));

    private double Crossed(Label label)
    {
        double cost = 0;
        for (int i = 0; i < targets.Count; i++)
        {
            if (i == label.Target)
            {
                continue;
            }

            SeenStroke[] strokes = [.. targets[i].Strokes.Where(stroke => stroke.MayReach(label.Leader, Near))];
            cost += CrossedWall * Math.Min(MostCounted, strokes.Count(stroke => stroke.Meets(label.Leader)));
            cost += Alongside * Along(label).Count(spot => Array.Exists(strokes, stroke => stroke.IsNear(spot, Near)));
            cost += Array.Exists(strokes, stroke => stroke.IsNear(label.End, Near)) ? EndNearOther : 0;
        }

        return cost;
    }

    /// <summary>Spots along a line, so that one that runs beside a wall is told from one that only crosses it.</summary>
    private static IEnumerable<Spot> Along(Label label)
    {
        double length = label.From.To(label.End);
        for (double at = Step; at < length; at += Step)
        {
            yield return label.From.Moved((label.End.X - label.From.X) * at / length, (label.End.Y - label.From.Y) * at / length);
        }
    }
}
