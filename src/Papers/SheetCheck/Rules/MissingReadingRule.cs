using System.Text.RegularExpressions;
using Calx.Papers.Handouts;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>What is asked for has to follow from what the table has a row or column for.</summary>
internal static partial class MissingReadingRule
{
    public static IEnumerable<SheetFinding> Of(CheckedSheet it)
    {
        Practical practical = it.Practical;
        HashSet<string> there = [.. it.Tables.SelectMany(t => t.Headings).Select(h => h.Named.Column?.Id).OfType<string>(), .. Lines(it)];
        var reach = new AnswerReach(practical, there);
        (string Wanted, SheetParagraph Where, string[] Missing)[] unmet =
        [
            .. practical.Answers.Where(a => !reach.Gives(a)).Select(a => (a.Label, Asking(it, a), AnswerReach.ReadingsOf(a, practical).Where(r => !there.Contains(r)).ToArray()))
                .Where(a => a.Item2 is not null).Select(a => (a.Label, a.Item2!, a.Item3)),
            .. practical.Sheet.Questions.Select(q => (q.Ask, AskingWord(it, q), q.Needs.Where(r => !there.Contains(r) && !reach.Gives(r)).ToArray()))
                .Where(q => q.Item2 is not null && q.Item3.Length > 0).Select(q => (q.Ask, q.Item2!, q.Item3)),
        ];
        foreach (string reading in practical.Readings.Select(r => r.Id))
        {
            var lacking = unmet.Where(u => u.Missing.Contains(reading)).ToArray();
            if (lacking.Length == 0)
            {
                continue;
            }

            string name = ReadingNames.Of(practical, reading, 1);
            string wanted = Sentences.And([.. lacking.Select(l => $"'{l.Wanted}'")], it.Language);
            yield return new SheetFinding(
                "missing-reading", lacking[0].Where.Place.At(0, it.Language), Quoted.Whole(lacking[0].Where.Text),
                lacking.Length == 1 ? it.Texts.MissingReading(wanted, name) : it.Texts.MissingReadings(wanted, name),
                it.Texts.MissingReadingExpected(Sentences.Heading(name, practical.Reading(reading).Unit)));
        }
    }

    // 'Mass of crucible and lid: ........ g' is a place to write a reading too.
    private static IEnumerable<string> Lines(CheckedSheet it) =>
        from paragraph in it.Sheet.Paragraphs
        where paragraph.Text.AsSpan().IndexOfAny('_', '…') >= 0 || paragraph.Text.Contains("...", StringComparison.Ordinal)
        from Match match in ToFillIn().Matches(paragraph.Text)
        let column = it.Headings.Of(match.Groups["label"].Value.Trim()).Column
        where column is not null
        select column.Id;

    private static SheetParagraph? Asking(CheckedSheet it, AnswerDefinition answer)
    {
        string wanted = Folded(answer.Label, it.Practical);
        bool isEnd = !it.Practical.Answers.Any(a => a.Formula.Names.Contains(answer.Id));
        return it.Sheet.Paragraphs.FirstOrDefault(p => !(p.InTable && it.Headings.Of(p.Text).Column is not null)
            && (Folded(p.Text, it.Practical).Contains(wanted, StringComparison.Ordinal) || (isEnd && AsksForTheResult().IsMatch(p.Text))));
    }

    private static SheetParagraph? AskingWord(CheckedSheet it, SheetQuestion question)
    {
        string wanted = Folded(question.Ask, it.Practical);
        return it.Sheet.Paragraphs.FirstOrDefault(p => Folded(p.Text, it.Practical).Contains(wanted, StringComparison.Ordinal));
    }

    // Words alone, formulas of the practical's materials by their names: 'mass of Mg' asks for the mass of magnesium.
    private static string Folded(string text, Practical practical)
    {
        Dictionary<string, string> names = practical.Materials.Where(m => m.FormulaText is not null && !m.Air)
            .GroupBy(m => m.FormulaText!).ToDictionary(same => same.Key, same => same.MinBy(m => m.Label.Length)!.Label, StringComparer.Ordinal);
        return $" {string.Join(' ', Word().Matches(text).Select(m => names.GetValueOrDefault(m.Value, m.Value).ToLowerInvariant()).Where(w => w is not ("the" or "your")))} ";
    }

    [GeneratedRegex(@"(?<label>[^=:_….;\n]{3,120}?)\s*([=:]|(?=[_…]))\s*([_…]+|\.{3,})", RegexOptions.CultureInvariant)]
    private static partial Regex ToFillIn();

    [GeneratedRegex(@"(?i)\b(work out|calculate|find|determine|deduce|what is|use your (results|readings))\b[^.?!]{0,200}\b(empirical formula|formula of|ratio|value of x|percentage yield)\b", RegexOptions.CultureInvariant)]
    private static partial Regex AsksForTheResult();

    [GeneratedRegex(@"[\p{L}\p{Nd}]+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
