namespace Calx.Papers.Charts;

/// <summary>Moves marks that would hide each other a little aside, so that as many are seen as there are.</summary>
internal static class Dodge
{
    /// <summary>Marks nearer than this hide one another, and are moved by as much.</summary>
    private const double Room = 10;

    /// <summary>How far each mark is moved across, in the drawing's units: 0 for the first at its place, then to the right and to the
    /// left in turn, and 0 again where there is no room.</summary>
    /// <param name="places">Where the marks belong.</param>
    /// <param name="left">Nothing is moved beyond here.</param>
    /// <param name="right">Nor beyond here.</param>
    public static double[] Aside(IReadOnlyList<(double X, double Y)> places, double left, double right)
    {
        var taken = new List<(double X, double Y)>();
        double[] aside = new double[places.Count];
        for (int i = 0; i < places.Count; i++)
        {
            (double x, double y) = places[i];
            aside[i] = Steps(places.Count).FirstOrDefault(step => x + step >= left && x + step <= right
                && taken.TrueForAll(t => Math.Abs(t.X - x - step) >= Room || Math.Abs(t.Y - y) >= Room));
            taken.Add((x + aside[i], y));
        }

        return aside;
    }

    private static IEnumerable<double> Steps(int most)
    {
        yield return 0;
        for (int i = 1; i <= most; i++)
        {
            yield return Room * i;
            yield return -Room * i;
        }
    }
}
