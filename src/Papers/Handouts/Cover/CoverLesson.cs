using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts.Cover;

/// <summary>What the papers of a cover lesson share: the invented class as a table, how answers follow, and their running heads.</summary>
internal sealed class CoverLesson
{
    /// <summary>What a group without such a weighing has in its place.</summary>
    private const string NotTaken = "–";

    private readonly PaperSetting setting;

    public CoverLesson(PaperSetting setting)
    {
        this.setting = setting;
        Texts = new CoverTexts(setting.Language);
        SheetTexts = new StudentSheetTexts(setting.Language);
        Class = CoverClass.Of(Plan, AtomicWeights.Iupac2024, setting.Seed);
        Decimals = Plan.Balances[0].Decimals;
    }

    /// <summary>What its papers say by themselves.</summary>
    public CoverTexts Texts { get; }

    /// <summary>What they say in the words of the student sheet.</summary>
    public StudentSheetTexts SheetTexts { get; }

    public CoverClass Class { get; }

    public PlanSettings Plan => setting.Plan.Settings;

    public Practical Practical => setting.Practical;

    /// <summary>Whether the teacher would have shown it: then there is one set of readings and no group.</summary>
    public bool IsShown => Practical.Limits.IsDemonstration;

    /// <summary>Decimals of the balance.</summary>
    public int Decimals { get; }

    /// <summary>Where the data come from, for everybody who reads them.</summary>
    public string Origin => Texts.Origin(setting.Seed.ToString(CultureInfo.InvariantCulture));

    /// <summary>A paper of it. It says nothing of a draft: where nothing is handled, no amount or step waits for a check.</summary>
    public Paper Paper(string id, Phrase title, IReadOnlyList<PaperBlock> content, PaperLook look) =>
        new(id, title, setting.Heads(Texts.Kind) with { Draft = null }, content, look);

    /// <summary>A row a group, headed quantity / unit, each reading with the decimals of the balance; of a demonstration a row a reading.</summary>
    public PaperBlock.Table Readings() => IsShown ? OneSet() : new(new PaperTable(
        [new(Texts.GroupColumn, 0.6), .. Class.Weighings.Select(w => new PaperColumn(SheetReadings.Heading(Practical, w), 1.5, IsNumber: true))],
        [
            .. Class.Groups.Select(g => (PaperCell[])
            [
                new PaperCell(g.Number.ToString(CultureInfo.InvariantCulture), IsHeading: true),
                .. Class.Weighings.Select(w => (PaperCell)(g.Readings.TryGetValue(w, out decimal value) ? Written(w, value) : NotTaken)),
            ]),
        ],
        TableRuling.Framed));

    private PaperBlock.Table OneSet() => new(new PaperTable(
        [new(SheetTexts.ReadingColumn, 4.2), new(SheetTexts.WrittenColumn, 1.6, IsNumber: true)],
        [
            .. Class.Weighings.Select(w => (PaperCell[])
            [
                new(SheetReadings.Heading(Practical, w), IsHeading: true), Written(w, Class.Groups[0].Readings[w]),
            ]),
        ],
        TableRuling.Framed));

    /// <summary>Mass against time of the first group that is as expected, for the questions that are answered from a curve; nothing where the
    /// practical takes none.</summary>
    public IReadOnlyList<PaperBlock> Curve()
    {
        CoverGroup? drawn = Class.Groups.Where(g => g.Series is not null).OrderBy(g => g.Causes.Count).FirstOrDefault();
        return drawn is null ? [] :
        [
            new PaperBlock.Paragraph(Texts.CurveOf(Sentences.Count(drawn.Number))),
            .. SheetSeries.Table(Practical, setting.Language, [.. drawn.Series!.Points.Skip(1).SkipLast(1).Select(p => p.Value.ToString())]).OfType<PaperBlock.Table>(),
        ];
    }

    /// <summary>How each answer follows, in words.</summary>
    public IReadOnlyList<PaperBlock> Workings() =>
    [
        new PaperBlock.Items(ListKind.Numbers, [.. Asked.Select(a => Phrase.Bold(Sentences.Heading(Text.Capital(a.Label), a.Unit)).Then($" = {SheetWorkings.InWords(Practical, a, setting.Language)}"))]),
        new SheetWorkings(Practical, AtomicWeights.Iupac2024, setting.Language).Of(SupportLevel.Standard, sideBySide: false)[0],
    ];

    /// <summary>The answers that the table's readings give.</summary>
    public IReadOnlyList<AnswerDefinition> Asked
    {
        get
        {
            var known = Class.Weighings.Select(w => w.Reading).ToHashSet(StringComparer.Ordinal);
            var asked = new List<AnswerDefinition>();
            foreach (AnswerDefinition answer in Practical.Answers.Where(a => a.Formula.Names.All(known.Contains)))
            {
                known.Add(answer.Id);
                asked.Add(answer);
            }

            return asked;
        }
    }

    /// <summary>The questions that the table's readings can answer, in the order of the sheet.</summary>
    public IReadOnlyList<SheetQuestion> Questions => [.. Plan.Questions.Where(q => !q.Needs.Any(Plan.Unread.Contains))];

    /// <summary>The questions in a numbered list; they are answered on paper of one's own.</summary>
    public IReadOnlyList<PaperBlock> Asking() => Questions.Count == 0 ? [] :
    [
        new PaperBlock.Items(
            ListKind.Numbers,
            [.. Questions.Select(q => Phrase.Of(q.Ask).Then($" {(q.Expected.Count == 1 ? SheetTexts.OneMark : SheetTexts.Marks(Sentences.Count(q.Expected.Count)))}", PhraseLook.Italic))]),
    ];

    private string Written(Weighing weighing, decimal value) =>
        value.ToString($"F{Practical.Reading(weighing.Reading).Errors?.Step.Decimals ?? Decimals}", CultureInfo.InvariantCulture);
}
