using Calx.Papers.Documents;
using Calx.Papers.Slips;
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
    public PaperSetting(Plan plan, PaperOccasion occasion, PaperLook? look, bool isChecked)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(occasion);
        (Plan, Occasion, Look, IsChecked) = (plan, occasion, look ?? PaperLook.Usual, isChecked);
    }

    /// <summary>The lesson's plan.</summary>
    public Plan Plan { get; }

    /// <summary>Class and date.</summary>
    public PaperOccasion Occasion { get; }

    /// <summary>How papers are printed.</summary>
    public PaperLook Look { get; }

    /// <summary>Whether the practical was signed.</summary>
    public bool IsChecked { get; }

    /// <summary>The practical.</summary>
    public Practical Practical => Plan.Settings.Practical;

    /// <summary>What a paper says of itself as long as the practical was not signed, or null.</summary>
    internal string? Draft => IsChecked ? null : RecordSlips.Draft;

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
        string right = string.Join(" · ", new[] { Occasion.ClassName, Occasion.Date }.OfType<string>());
        string printed = Occasion.Printed is string day ? $" · printed {day}" : string.Empty;
        return new RunningHeads(
            $"{kind}: {Practical.Title}", right, FormattableString.Invariant($"{Practical.Id}, version {Practical.Version}{printed}"), Draft);
    }
}
