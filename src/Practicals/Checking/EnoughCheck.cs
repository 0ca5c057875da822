using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Checking;

/// <summary>
/// What the sample reacts with is to be enough for it: otherwise the theory value, worked out at the usual sample, is that of the
/// other reactant, and every sound class seems to be wrong.
/// </summary>
internal static class EnoughCheck
{
    /// <summary>A sample of which there is always enough of the rest, as a share of the usual one.</summary>
    private const double Small = 0.05;

    /// <summary>By how much the change of 1 g may differ, as a share: rounded strengths (judgement).</summary>
    private const double Slack = 0.01;

    public static IEnumerable<CheckFinding> Of(Practical practical, IdealRun run, AtomicWeights weights)
    {
        if (practical.Amounts is not AmountsDefinition amounts || SampleMiddle.With(new Circumstances(practical), weights) is not (double middle, int place))
        {
            yield break;
        }

        string parameter = practical.Parameters[place].Id;
        double due = run.ChangeOfOneGramWith(parameter, Small * amounts.UsualInGrams / middle);
        foreach ((string name, double sample, FilePosition at) in new[]
        {
            ("usual", amounts.UsualInGrams, amounts.At), ("largest", practical.Limits.LargestSample, practical.Limits.At),
        })
        {
            double change = run.ChangeOfOneGramWith(parameter, sample / middle);
            if (double.IsFinite(change) && Math.Abs(change - due) > Slack * Math.Abs(due))
            {
                yield return CheckFinding.At(
                    at,
                    $"with the {name} sample, {Figures(sample)} g, something that it reacts with runs out: 1 g changes by {Figures(change)} g there, and by {Figures(due)} g where there is plenty",
                    name == "usual" ? "put in more of what it reacts with ('with' or 'mass' in the procedure), or take less sample" : "put in more of what it reacts with, or allow less sample");
                yield break;
            }
        }
    }

    private static string Figures(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
