namespace Calx.Practicals.Definition;

/// <summary>Least, likely and most minutes where somebody says one number: 'about ten'.</summary>
public static class GuessedMinutes
{
    /// <summary>Three quarters of it at the least and half as much again at the most: a class is seldom much faster than one thinks, and often
    /// slower (judgement). In halves of a minute where it is long enough for that to make no difference.</summary>
    /// <param name="likely">The minutes said, above 0.</param>
    public static double[] About(double likely) => [Rounded(0.75 * likely), likely, Rounded(1.5 * likely)];

    /// <summary>Of least and most: the likely one lies half-way.</summary>
    /// <param name="least">The least minutes, above 0.</param>
    /// <param name="most">The most, above the least.</param>
    public static double[] Between(double least, double most) => [least, (least + most) / 2, most];

    private static double Rounded(double minutes) => minutes >= 3 ? Math.Round(2 * minutes, MidpointRounding.AwayFromZero) / 2 : minutes;
}
