using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts;

/// <summary>The groups with an odd result and what may have happened there, and whatever befell most groups: for the teacher.</summary>
internal static class OddGroups
{
    /// <summary>So many are told of; a report has two sides at most.</summary>
    private const int MostTold = 10;

    private const int MostCauses = 4;

    /// <summary>Less probable causes are not named.</summary>
    private const double LeastShown = 0.1;

    /// <summary>Heading and list, or nothing where no result is odd.</summary>
    public static IEnumerable<PaperBlock> Of(ClassFindings findings, PaperLanguage language)
    {
        ClassReportTexts texts = new(language);
        GroupFindings[] odd = [.. findings.Groups.Where(g => g.IsAnomalous)];
        Phrase[] shared = [.. findings.Class.SharedCauses.Select(s => Phrase.Bold(Text.Together(s.Sentence)))];
        if (odd.Length == 0 && shared.Length == 0)
        {
            yield break;
        }

        yield return new PaperBlock.Heading(odd.Length == 0 ? texts.MayHaveHappened : texts.OddHeading);
        foreach (Phrase sentence in shared)
        {
            yield return new PaperBlock.Paragraph(sentence);
        }

        if (findings.Class.Sentences.FirstOrDefault(s => s.Topic == ConclusionTopic.OddResults) is ConclusionSentence leftOut)
        {
            string rates = odd.Any(g => g.Diagnosis is not null) ? $" {texts.JudgedRates}" : string.Empty;
            yield return new PaperBlock.Paragraph(Text.Together(leftOut.WithoutNames + rates));
        }

        if (odd.Length > 0)
        {
            yield return new PaperBlock.Items(ListKind.Bullets, [.. odd.Take(MostTold).Select(g => Told(g, texts, language))]);
        }

        if (odd.Length > MostTold)
        {
            string more = Sentences.Count(odd.Length - MostTold);
            string names = Sentences.And([.. odd.Skip(MostTold).Take(MostTold).Select(g => Named(g, language))], language);
            yield return new PaperBlock.Paragraph(odd.Length > 2 * MostTold ? texts.OddMoreAndOthers(more, names) : texts.OddMore(more, names), ParagraphLook.Small);
        }
    }

    /// <summary>A group's name, then what probably happened and what to do; where causes were not looked for, what makes it odd.</summary>
    private static Phrase Told(GroupFindings group, ClassReportTexts texts, PaperLanguage language) => Phrase.Bold($"{Named(group, language)}. ").Then(
        Text.Together(group.Diagnosis is GroupDiagnosis known ? $"{known.ForTeacher}{Others(known, texts)}" : group.Oddity.Reason));

    /// <summary>A number alone would be taken for the list's; any other name stands as it was written.</summary>
    private static string Named(GroupFindings group, PaperLanguage language) =>
        GroupReadings.InSentence(group.Name, language.Engine) is var name && name == group.Name ? name : Text.Capital(name);

    /// <summary>Further causes that are probable enough to be thought of; what the masses cannot tell apart has been named already.</summary>
    private static string Others(GroupDiagnosis diagnosis, ClassReportTexts texts)
    {
        string[] told = [diagnosis.First.Cause, .. diagnosis.Tied.SelectMany(t => t.Causes)];
        string[] others = [.. diagnosis.Causes.Take(MostCauses).Where(c => c.Probability >= LeastShown && !told.Contains(c.Cause))
            .Select(c => texts.CauseAndChance(
                c.Cause == Causes.AsExpected ? texts.AsExpected : c.Label, (100 * c.Probability).ToString("F0", CultureInfo.InvariantCulture)))];
        return others.Length == 0 ? string.Empty : $" {texts.OtherCauses(string.Join("; ", others))}";
    }
}
