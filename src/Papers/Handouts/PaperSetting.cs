using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts;

/// <summary>What the papers of a lesson are made from: the plan, the occasion, and how they are printed.</summary>
public sealed class PaperSetting
{
    /// <summary>Takes them.</summary>
    /// <param name="plan">The lesson's plan.</param>
    /// <param name="occasion">Class and date.</param>
    /// <param name="look">How they are printed; null for A4 with letters of usual size.</param>
    /// <param name="isChecked">Whether the practical was signed as checked against the employer's risk assessment and tried out; till then every
    /// paper says DRAFT.</param>
    /// <param name="seed">Which of the possible classes stands where data are simulated.</param>
    public PaperSetting(Plan plan, PaperOccasion occasion, PaperLook? look, bool isChecked, ulong seed = 1)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(occasion);
        (Plan, Occasion, StudentLook, IsChecked, Seed) = (plan, occasion, look ?? PaperLook.Usual, isChecked, seed);
        Look = StudentLook with { IsOneStep = false };
    }

    /// <summary>The lesson's plan.</summary>
    public Plan Plan { get; }

    /// <summary>Class and date.</summary>
    public PaperOccasion Occasion { get; }

    /// <summary>How student sheets are printed: one step a page, where that is wanted.</summary>
    public PaperLook StudentLook { get; }

    /// <summary>How all other papers are printed.</summary>
    public PaperLook Look { get; }

    /// <summary>The language of the papers' own texts.</summary>
    public PaperLanguage Language => Look.Language.For(Practical);

    /// <summary>Whether the practical was signed.</summary>
    public bool IsChecked { get; }

    /// <summary>Which of the possible classes stands where data are simulated.</summary>
    public ulong Seed { get; }

    /// <summary>The practical.</summary>
    public Practical Practical => Plan.Settings.Practical;

    /// <summary>What a paper says of itself as long as the practical was not signed, or null.</summary>
    internal string? Draft => IsChecked ? null : new SharedTexts(Language).Draft;

    /// <summary>A paper with the running heads of this lesson.</summary>
    /// <param name="id">What its file is called.</param>
    /// <param name="kind">What kind of paper it is.</param>
    /// <param name="title">Its title.</param>
    /// <param name="content">What is on it.</param>
    /// <param name="look">How it is printed where that differs from the others.</param>
    internal Paper Paper(string id, string kind, Phrase title, IReadOnlyList<PaperBlock> content, PaperLook? look = null) =>
        new(id, title, Heads(kind), content, look ?? Look);

    /// <summary>The running heads of this lesson.</summary>
    /// <param name="kind">What kind of paper they stand on.</param>
    internal RunningHeads Heads(string kind)
    {
        SharedTexts texts = new(Language);
        string right = string.Join(" · ", new[] { Occasion.ClassName, Occasion.Date }.OfType<string>());
        string version = Sentences.Count(Practical.Version);
        string foot = Occasion.Printed is string day ? texts.FootOfPrintedPaper(Practical.Id, version, day) : texts.FootOfPaper(Practical.Id, version);
        foot = Occasion.IsInvented ? texts.FootOfInvented(foot) : foot;
        return new RunningHeads(texts.HeadOfPaper(kind, Practical.Title), right, foot, Draft);
    }
}
