namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Nodes along one number, dense enough for a peak and far enough out for its tails: outwards from the peak in even steps until
/// the height has fallen to nothing, in steps that grow once they are far from it. Trapezia over such nodes are exact to many
/// digits for smooth peaks.
/// </summary>
internal static class Quadrature
{
    // e⁻¹⁸ is 2e-8: nothing that is left out is seen.
    private const double Drop = 18;

    // Nodes wanted where the height is within 2 of the top: for a normal peak, steps of 0.25 standard deviations.
    private const int Fewest = 12;
    private const int Most = 34;
    private const int MostRefinements = 30;
    private const int MostNodes = 400;

    /// <summary>A place, the logarithm of height times the width it stands for, and what was computed there.</summary>
    internal readonly record struct Node<T>(double Place, double Width, double LogWeight, T Value);

    /// <summary>Lays nodes.</summary>
    /// <param name="peak">Near the highest place.</param>
    /// <param name="step">A first guess of the step.</param>
    /// <param name="low">No node lies below.</param>
    /// <param name="high">No node lies above.</param>
    /// <param name="at">The logarithm of the height, and what else is wanted, at a place.</param>
    public static List<Node<T>> Along<T>(double peak, double step, double low, double high, Func<double, (double LogHeight, T Value)> at)
    {
        double widest = (high - low) / 24;
        step = Math.Min(Guess(peak, step, low, high, place => at(place).LogHeight), widest);
        List<(double Place, double LogHeight, T Value)> points = [];
        for (int i = 0; i < MostRefinements; i++)
        {
            points = Outwards(peak, step, low, high, at);
            double top = points.Max(point => point.LogHeight);
            peak = points.Find(point => point.LogHeight == top).Place;
            int within = points.Count(point => point.LogHeight > top - 2);
            double wanted = within < Fewest ? step * Math.Max(0.1, within / 20.0) : within > Most ? step * within / 20 : step;
            wanted = Math.Min(wanted, widest);
            if (wanted == step || step < 1e-13 * (high - low))
            {
                break;
            }

            step = wanted;
        }

        return Weighted(points);
    }

    // A quarter of a standard deviation, from how far the height falls over a step that is neither too short nor too long.
    private static double Guess(double peak, double step, double low, double high, Func<double, double> height)
    {
        double top = height(peak);
        for (int i = 0; i < MostRefinements; i++)
        {
            double fall = top - (peak + step < high ? height(peak + step) : peak - step > low ? height(peak - step) : 0);
            if (fall is > 0.02 and < 8)
            {
                return step / Math.Sqrt(2 * fall) / 4;
            }

            step = fall >= 8 ? step / 5 : Math.Min(4 * step, (high - low) / 24);
            if (step >= (high - low) / 24)
            {
                break;
            }
        }

        return step;
    }

    private static List<(double Place, double LogHeight, T Value)> Outwards<T>(
        double peak, double step, double low, double high, Func<double, (double LogHeight, T Value)> at)
    {
        (double first, T value) = at(peak);
        List<(double Place, double LogHeight, T Value)> points = [(peak, first, value)];
        double top = first;
        foreach (int side in (int[])[-1, 1])
        {
            double place = peak;
            double stride = step;
            for (int i = 1; i <= MostNodes && place > low && place < high; i++)
            {
                // Beyond six or so standard deviations the tail is smooth, and each step may be a little longer.
                stride = i > 24 ? stride * 1.15 : stride;
                place = Math.Clamp(place + (side * stride), low, high);
                (double height, T here) = at(place);
                points.Add((place, height, here));
                top = Math.Max(top, height);
                if (height < top - Drop)
                {
                    break;
                }
            }
        }

        points.Sort((left, right) => left.Place.CompareTo(right.Place));
        return points;
    }

    private static List<Node<T>> Weighted<T>(List<(double Place, double LogHeight, T Value)> points)
    {
        List<Node<T>> nodes = [];
        for (int i = 0; i < points.Count; i++)
        {
            double before = i > 0 ? points[i].Place - points[i - 1].Place : 0;
            double after = i + 1 < points.Count ? points[i + 1].Place - points[i].Place : 0;
            double width = points.Count == 1 ? 1 : (before + after) / 2;
            nodes.Add(new Node<T>(points[i].Place, width, points[i].LogHeight + Math.Log(width), points[i].Value));
        }

        return nodes;
    }
}
