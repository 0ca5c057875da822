using Calx.Measurement.Expressions;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>What the class did, in the practical's own words, or told from its events: what was put in and what was read, in order. How it
/// was done is left out: nobody is to do it from this paper.</summary>
internal static class ClassAccount
{
    public static IReadOnlyList<Phrase> Of(PlanSettings plan, CatchUpTexts texts)
    {
        IReadOnlyList<SheetStep> own = plan.Practical.Sheet.Account;
        string[] told = own.Count > 0
            ? [.. own.Where(s => SheetSteps.IsDone(s, plan)).Select(s => $"{s.Say.Replace(SheetStep.Sample, Sample(plan), StringComparison.Ordinal)};")]
            : [.. plan.Practical.Procedure.Select(e => Told(plan, e, texts)).OfType<string>()];
        // Several reactions at one time are one thing that was done.
        string[] once = [.. told.Where((said, i) => i == 0 || said != told[i - 1])];
        return [.. once.Select((said, i) => Phrase.Of(i == once.Length - 1 ? $"{said.TrimEnd('.', ';')}." : said))];
    }

    private static string? Told(PlanSettings plan, ProcedureEvent happened, CatchUpTexts texts) => happened switch
    {
        ReadEvent read when IsRead(plan, read) => plan.Practical.Reading(read.Reading).IsWeighing
            ? texts.Read(Name(plan.Practical, read)) : texts.ReadInstrument(Name(plan.Practical, read)),
        AddEvent add => PutIn(plan, add, texts),
        ReactEvent => texts.LetReact,
        RepeatEvent { Most: > 1, Until: StopRule.AllRounds } all when Reads(plan, all) is { Length: > 0 } names =>
            texts.HeatedRounds(names, NumberInWords(all.Most, texts)),
        RepeatEvent { Most: > 1 } again when Reads(plan, again) is { Length: > 0 } names =>
            texts.HeatedAgain(names, NumberInWords(again.Most, texts)),
        RepeatEvent once when Reads(plan, once) is { Length: > 0 } names => texts.HeatedOnce(names),
        _ => null,
    };

    private static string Reads(PlanSettings plan, RepeatEvent again) =>
        string.Join(", ", again.Do.OfType<ReadEvent>().Where(r => IsRead(plan, r)).Select(r => Name(plan.Practical, r)));

    private static bool IsRead(PlanSettings plan, ReadEvent read) => !plan.Unread.Contains(read.Reading);

    private static string Name(Practical practical, ReadEvent read)
    {
        string name = ReadingNames.Of(practical, read.Reading, 1);
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    /// <summary>With the plan's mass, where what is put in is the sample by itself.</summary>
    private static string PutIn(PlanSettings plan, AddEvent add, CatchUpTexts texts)
    {
        string material = plan.Practical.Materials.First(m => m.Id == add.Material).Label;
        return add.Mass is NameTerm && plan.Practical.Procedure.OfType<AddEvent>().Count() == 1
            ? texts.PutInAmount(Sample(plan), material) : texts.PutIn(material);
    }

    private static string Sample(PlanSettings plan) => Sentences.Mass(plan.SampleInGrams, plan.Balances.Min(b => b.Decimals));

    private static string NumberInWords(int number, CatchUpTexts texts) => number switch
    {
        2 => texts.Two,
        3 => texts.Three,
        4 => texts.Four,
        5 => texts.Five,
        _ => number.ToString(System.Globalization.CultureInfo.InvariantCulture),
    };
}
