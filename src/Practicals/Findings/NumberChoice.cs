using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>Which of a few numbers the class's value points to, where that is a question of the practical: 'two, not one or three'. A number is
/// excluded where it lies outside the 95 % interval; of those left the nearest by ratio counts, as in docs/methods/conclusions.md.</summary>
internal static class NumberChoice
{
    /// <summary>A sentence for each such question whose quantity the class has.</summary>
    public static IEnumerable<string> Sentences(Practical practical, IReadOnlyList<ClassQuantity> pooled, IdealRun ideal, EngineLanguage language) =>
        practical.Conclusions.Where(c => c.Test is ConclusionTest.Chooses { Among.Count: > 0 })
            .SelectMany(c => pooled.Where(q => q.Quantity.Id == c.Test!.Quantity).Select(q => Sentence(c, q, ideal, language)));

    private static string Sentence(ConclusionDefinition conclusion, ClassQuantity found, IdealRun ideal, EngineLanguage language)
    {
        var texts = new ConclusionTexts(language);
        var wording = new Wording(language);
        double[] among = [.. ((ConclusionTest.Chooses)conclusion.Test!).Among.Order()];
        double nearest = among[NearestNumber.Of(among, found.Value)];
        double[] open = [.. among.Where(n => n == nearest || (n >= found.Interval.Low && n <= found.Interval.High))];
        if (found.Value <= 0 || open.Length == among.Length)
        {
            return texts.ChoosesNone(found.Quantity.Label, wording.And([.. among.Select(Written)]));
        }

        string left = wording.And([.. open.Select(Written)]);
        string excluded = wording.And([.. among.Except(open).Select(Written)]);
        if (open.Length > 1)
        {
            return texts.ChoosesAmong(found.Quantity.Label, excluded, left);
        }

        return nearest == among[NearestNumber.Of(among, ideal.Accepted(found.Quantity.Id))]
            ? texts.ChoosesOne(found.Quantity.Label, left, excluded, conclusion.Label)
            : texts.ChoosesAnother(found.Quantity.Label, left, excluded);

        string Written(double number) => number.InFigures("0.###") + found.Quantity.UnitBehind;
    }
}
