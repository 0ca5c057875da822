using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Minutes since the flame was put out, as evidence of warmth at the last weighing: 'flame out 6 min' among the observations.
/// Nobody tests warmth by touch. By the practical's cooling curve the excess over the room is known to within a factor.
/// </summary>
internal sealed partial class CoolingEvidence
{
    /// <summary>Less than this shows on no school balance; it stands for 'cool'.</summary>
    private const double CoolInKelvin = 5;

    /// <summary>Middle of the coefficient of a warm vessel, in mg for each kelvin, and how far in logarithm it may lie off.</summary>
    private const double MilligramsPerKelvin = 0.2;
    private const double CoefficientSpread = 0.3;

    private readonly HiddenGroups hidden;
    private readonly GroupProblem problem;
    private readonly double logDue;
    private readonly double spread;
    private readonly int last;
    private readonly double[] shift;

    private CoolingEvidence(HiddenGroups hidden, GroupProblem problem, CoolingDefinition cooling, double minutes)
    {
        this.hidden = hidden;
        this.problem = problem;
        logDue = Math.Log(Math.Max(cooling.ExcessInKelvinAfter(minutes), CoolInKelvin));
        spread = Math.Sqrt((cooling.RelativeSpread * cooling.RelativeSpread) + (CoefficientSpread * CoefficientSpread));
        shift = new double[problem.View.Weighings.Count];
        last = Enumerable.Range(0, shift.Length).LastOrDefault(i => problem.View.Weighings[i].Reading == cooling.Reading, -1);
    }

    /// <summary>The evidence of a group, or null where it says nothing of the minutes or nothing is hot.</summary>
    public static CoolingEvidence? Of(HiddenGroups hidden, GroupProblem problem) =>
        hidden.Circumstances.Practical.Cooling is CoolingDefinition cooling && problem.MinutesCooled is double minutes
            ? new CoolingEvidence(hidden, problem, cooling, minutes) : null;

    /// <summary>The minutes that a group noted, or null.</summary>
    public static double? MinutesIn(GroupReadings group)
    {
        Match? noted = group.Remarks.Observations.Select(o => FlameOut().Match(o)).LastOrDefault(m => m.Success);
        return noted is null ? null
            : double.Parse(noted.Groups[1].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
    }

    /// <summary>Natural logarithm of how well an atom's warmth at the last weighing fits the minutes.</summary>
    public double LogLikelihood(Atom atom)
    {
        double grams = 0;
        foreach (int fault in atom.Set.Faults)
        {
            if (last >= 0 && hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Warm)
            {
                hidden.Space.Shift(
                    atom.Set, fault, hidden.EvenOf(atom.Point, atom.Set), hidden.Tables.Of, problem.View.Weighings, shift);
                grams += shift[last];
            }
        }

        double away = (Math.Log(Math.Max(-1000 * grams / MilligramsPerKelvin, CoolInKelvin)) - logDue) / spread;
        return -0.5 * away * away;
    }

    [GeneratedRegex(@"flame out\D{0,12}(\d{1,3}(?:[.,]\d{1,2})?) ?min", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FlameOut();
}
