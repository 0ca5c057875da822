using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>At which weighings a part may have been missing: at one of them, or at one and all later ones (a lid that
/// broke), each equally likely.</summary>
internal sealed class PartOffModes
{
    private const double Outside = 0.02;

    private readonly MassRange range;

    public PartOffModes(GroupProblem problem, Practical practical, int fault)
    {
        Part part = practical.Parts.First(p => p.Id == ((FaultEffect.Off)practical.Faults[fault].Effect).Part);
        range = part.Mass;
        Mean = (range.Low + range.Typical + range.High) / 3;
        Variance = Math.Pow(range.High - range.Low, 2) / 12;
        int[] rows =
        [
            .. Enumerable.Range(0, problem.Rows.Length).Where(i => problem.Rows[i].IsReading
                && practical.Reading(problem.View.Weighings[problem.Rows[i].Weighings[0].Weighing].Reading).Pan.Parts.Contains(part.Id)),
        ];
        int[] inOrder = [.. rows.OrderBy(i => problem.Rows[i].Weighings[0].Weighing)];
        var modes = new List<(int[] Rows, double Share)>();
        for (int i = 0; i < inOrder.Length; i++)
        {
            int[] onwards = inOrder[i..];
            double share = 0.5 / inOrder.Length;
            if (onwards.Length == 1)
            {
                modes.Add((onwards, 2 * share));
                continue;
            }

            modes.Add(([inOrder[i]], share));
            modes.Add((onwards, share));
        }

        // Missing at every weighing, the part is as if it had never been there.
        Modes = [.. modes.Where(m => m.Rows.Length < problem.Rows.Length)];
    }

    /// <summary>Rows without the part, with the share of the fault's cases.</summary>
    public IReadOnlyList<(int[] Rows, double Share)> Modes { get; }

    /// <summary>Mean in g of the normal law that stands for the part's mass while other masses are integrated out.</summary>
    public double Mean { get; }

    /// <summary>Variance in g² of that law.</summary>
    public double Variance { get; }

    /// <summary>Logarithm of the part's own density over that of the normal law, at its mass as the readings tell it: with a
    /// broad law and sharp readings that is the whole correction.</summary>
    public double LogCorrection(double massInGrams)
    {
        double logNormal = -(Math.Pow(massInGrams - Mean, 2) / (2 * Variance)) - (0.5 * Math.Log(2 * Math.PI * Variance));
        double own = massInGrams <= range.Low || massInGrams >= range.High ? 0
            : massInGrams < range.Typical
                ? 2 * (massInGrams - range.Low) / ((range.High - range.Low) * (range.Typical - range.Low))
                : 2 * (range.High - massInGrams) / ((range.High - range.Low) * (range.High - range.Typical));
        // A lid of a kind that the practical does not know still is a lid.
        double any = massInGrams > 0 && massInGrams < 2 * range.High ? 1 / (2 * range.High) : 0;
        double density = ((1 - Outside) * own) + (Outside * any);
        return density > 0 ? Math.Log(density) - logNormal : double.NegativeInfinity;
    }
}
