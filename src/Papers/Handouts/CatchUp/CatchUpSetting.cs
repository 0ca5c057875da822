using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>What catch-up papers are made from besides the packs.</summary>
/// <param name="plan">The lesson's plan.</param>
/// <param name="occasion">Class and date.</param>
/// <param name="level">How much the sheets help.</param>
/// <param name="look">How they are printed.</param>
/// <param name="isChecked">Whether the practical was signed; till then every paper says DRAFT.</param>
public sealed class CatchUpSetting(PlanSettings plan, PaperOccasion occasion, SupportLevel level, PaperLook look, bool isChecked)
{
    /// <summary>The lesson's plan.</summary>
    public PlanSettings Plan { get; } = plan;

    /// <summary>How much the sheets help.</summary>
    public SupportLevel Level { get; } = level;

    /// <summary>How they are printed.</summary>
    public PaperLook Look { get; } = look;

    /// <summary>The language of the papers' own texts.</summary>
    public PaperLanguage Language => Look.Language.For(Practical);

    /// <summary>The practical.</summary>
    public Practical Practical => Plan.Practical;

    /// <summary>Whether the teacher did it, and the class looked on.</summary>
    internal bool IsDemonstration => Practical.Limits.IsDemonstration;

    /// <summary>Decimals that the pack's balance shows.</summary>
    internal int Decimals => Plan.Balances[0].Decimals;

    /// <summary>Class and date.</summary>
    internal PaperOccasion Occasion { get; } = occasion;

    /// <summary>A paper whose every page says that the data are simulated.</summary>
    internal Paper Paper(string id, string kind, Phrase title, IReadOnlyList<PaperBlock> content, PaperLook? own = null)
    {
        string right = string.Join(" · ", new[] { Occasion.ClassName, Occasion.Date }.OfType<string>());
        SharedTexts shared = new(Language);
        CatchUpTexts texts = new(Language);
        string version = Sentences.Count(Practical.Version);
        var heads = new RunningHeads(
            texts.HeadOfPaper(texts.Simulated, shared.HeadOfPaper(kind, Practical.Title)),
            right,
            Occasion.Printed is string day ? shared.FootOfPrintedPaper(Practical.Id, version, day) : shared.FootOfPaper(Practical.Id, version),
            isChecked ? null : shared.Draft);
        return new Paper(id, title, heads, content, own ?? Look);
    }
}
