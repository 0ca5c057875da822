using System.Globalization;
using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Checking;

/// <summary>
/// Laws whose draws are impossible: a share of 1.3, a mass below nothing. The tail of a law may reach beyond the range a little, and
/// is cut off there when groups are drawn; more than <see cref="Tolerated"/> of it is another law than the one that was meant.
/// </summary>
internal sealed class DrawCheck
{
    /// <summary>Share of a law that may lie beyond the range (judgement).</summary>
    private const double Tolerated = 0.025;

    private const int Draws = 400;

    private readonly Practical practical;
    private readonly FilePlaces places;
    private readonly DrawnUse[] uses;
    private readonly double[][] even;

    public DrawCheck(Practical practical, FilePlaces places)
    {
        this.practical = practical;
        this.places = places;
        HashSet<string> gauges = [.. practical.Gauges.Select(g => g.Id)];
        // What a gauge shows is known only while the procedure runs.
        uses = [.. DrawnUse.All(practical.Procedure).Where(u => !u.Formula.Names.Any(gauges.Contains))];
        var random = new RandomStream(seed: 1, stream: 1);
        even = [.. practical.Parameters.Select(_ => Enumerable.Range(0, Draws).Select(i => (i + random.NextDouble()) / Draws).ToArray())];
        foreach (double[] column in even)
        {
            random.Shuffle<double>(column);
        }
    }

    /// <summary>All that is impossible: of the ideals, of the laws, and of what arms, conditions and faults put in their place.</summary>
    public IEnumerable<CheckFinding> Findings(bool withFaults)
    {
        var sound = new List<DrawnUse>();
        foreach (DrawnUse use in uses)
        {
            CheckFinding[] own = [.. OfIdeals(use), .. Of(use, null, OwnPlace(use), "")];
            foreach (CheckFinding found in own)
            {
                yield return found;
            }

            // What is impossible by itself is not told again of every fault.
            sound.AddRange(own.Length == 0 ? [use] : []);
        }

        foreach ((ParameterSetting setting, string where) in Settings(withFaults))
        {
            foreach (CheckFinding found in sound.Where(u => u.Formula.Names.Contains(setting.Parameter)).SelectMany(u => Of(u, setting, setting.At, where)))
            {
                yield return found;
            }
        }
    }

    private IEnumerable<(ParameterSetting Setting, string Where)> Settings(bool withFaults) =>
    [
        .. practical.Arms.SelectMany(a => a.Set.Select(s => (s, $" in the arm '{a.Id}'"))),
        .. practical.Conditions.SelectMany(c => c.Settings.Select(s => (s, $" in the condition '{c.Id}'"))).Where(_ => withFaults),
        .. practical.Faults.Where(_ => withFaults).SelectMany(f => f.Effect is FaultEffect.Set set ? set.Settings.Select(s => (s, $" with the fault '{f.Cause}'")) : []),
    ];

    private IEnumerable<CheckFinding> OfIdeals(DrawnUse use)
    {
        double? value = Value(use.Formula, id => Ideal(practical.Parameters.First(p => p.Id == id)));
        string written = use.Formula.ToString();
        if (value is null)
        {
            yield return CheckFinding.At(use.At, $"with the ideals of its parameters '{written}' has no value", "look for a division by 0 or the logarithm of 0");
        }
        else if (!use.Fits(value.Value))
        {
            yield return CheckFinding.At(
                use.At,
                $"with the ideals of its parameters '{written}' is {Short(value.Value)}, where {use.Range} was expected",
                "look at 'ideal', or at the law where no ideal is given");
        }
    }

    private IEnumerable<CheckFinding> Of(DrawnUse use, ParameterSetting? setting, FilePosition at, string where)
    {
        double[] drawn = [.. Enumerable.Range(0, Draws).Select(i => Value(use.Formula, id => Draw(id, i, setting)) ?? double.NaN)];
        double[] impossible = [.. drawn.Where(v => !use.Fits(v))];
        if (impossible.Length > Tolerated * Draws)
        {
            double worst = impossible.Where(double.IsFinite).OrderByDescending(Math.Abs).FirstOrDefault(double.NaN);
            string so = double.IsNaN(worst) ? "" : $", such as {Short(worst)}";
            yield return CheckFinding.At(
                at,
                string.Create(CultureInfo.InvariantCulture, $"{100.0 * impossible.Length / Draws:0} % of the draws of '{use.Formula}'{where} are impossible{so}: {use.Range} was expected"),
                use.IsShare ? "a law that keeps from 0 to 1 is { beta: [alpha, beta, 0, 1] }" : "a law that keeps above 0 is { lognormal: [median, sigmaLn] }");
        }
    }

    /// <summary>The law of the only parameter of a formula, or the event where several meet.</summary>
    private FilePosition OwnPlace(DrawnUse use)
    {
        for (int i = 0; use.Formula.Names.Count == 1 && i < practical.Parameters.Count; i++)
        {
            if (practical.Parameters[i].Id == use.Formula.Names[0])
            {
                return places.Of("parameters", i, "law");
            }
        }

        return use.At;
    }

    private double Draw(string id, int draw, ParameterSetting? setting)
    {
        int at = 0;
        while (practical.Parameters[at].Id != id)
        {
            at++;
        }

        return LawQuantile.Of(setting?.Parameter == id ? setting.Law : practical.Parameters[at].Law, Math.Clamp(even[at][draw], 1e-9, 1 - 1e-9));
    }

    private static double Ideal(Parameter parameter) => parameter.Ideal ?? LawMiddle.Of(parameter.Law);

    private static double? Value(Expression formula, Func<string, double> parameter)
    {
        try
        {
            return formula.Evaluate(parameter, _ => 1);
        }
        catch (UndefinedResultException)
        {
            return null;
        }
    }

    private static string Short(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
