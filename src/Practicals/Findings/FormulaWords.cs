using Calx.Chemistry.Amounts;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>One sentence for a teacher on the formulas that masses allow: what they decide, and what they leave open.</summary>
internal sealed class FormulaWords
{
    private const int MostNamed = 4;

    /// <summary>What holds less than this together stays open.</summary>
    private const double Held = 0.95;

    private readonly FormulaTexts texts;
    private readonly CommonTexts common;
    private readonly Wording wording;

    private FormulaWords(EngineLanguage language) =>
        (texts, common, wording) = (new FormulaTexts(language), new CommonTexts(language), new Wording(language));

    /// <summary>Says it.</summary>
    public static string Of(FormulaRanking.Ranked ranked, EngineLanguage language) => new FormulaWords(language).Sentence(ranked);

    private string Sentence(FormulaRanking.Ranked ranked)
    {
        FormulaCandidate best = ranked.Candidates[0];
        if (ranked.NoneOfThese > best.Probability)
        {
            return texts.FitsNone(ranked.Candidates.MinBy(found => found.ChiSquared)!.Formula);
        }

        (string Name, double Probability)[] open = Open(ranked);
        return best.Probability switch
        {
            _ when open.Length == 1 => texts.SinglesOut(best.Formula, Percent(best.Probability)),
            >= 0.8 => texts.Favours(best.Formula, Percent(best.Probability), Listed(open[1..])),
            _ => texts.DoesNotDecide(Listed(open)),
        };
    }

    /// <summary>The fewest answers, 'none of these' among them, that hold 95 % together.</summary>
    private (string Name, double Probability)[] Open(FormulaRanking.Ranked ranked)
    {
        double held = 0;
        return [.. ranked.Candidates.Select(found => (Name: found.Formula, found.Probability))
            .Append((Name: texts.NoneOfThese, Probability: ranked.NoneOfThese))
            .OrderByDescending(answer => answer.Probability)
            .TakeWhile(answer =>
            {
                bool wanted = held < Held;
                held += answer.Probability;
                return wanted;
            })];
    }

    private string Listed((string Name, double Probability)[] open)
    {
        string named = wording.List([.. open.Take(MostNamed).Select(answer => texts.WithProbability(answer.Name, Percent(answer.Probability)))]);
        return open.Length <= MostNamed ? named : texts.AndMore(named, (open.Length - MostNamed).InFigures());
    }

    private string Percent(double probability) => probability switch
    {
        >= 0.995 => common.OverNinetyNine,
        < 0.005 => common.UnderOne,
        _ => common.Percent((100 * probability).InFigures("0")),
    };
}
