using Calx.App.Output;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;

namespace Calx.App.Input;

/// <summary>Catch-up packs as they were asked for in words.</summary>
internal sealed record CatchUpWords
{
    /// <summary>In which forms they can be had.</summary>
    public static IReadOnlyList<string> KnownFormats { get; } = ["docx", "html", "pdf"];

    /// <summary>How much sheets can help.</summary>
    public static IReadOnlyList<string> KnownLevels { get; } = [.. Enum.GetNames<SupportLevel>().Select(n => n.ToLowerInvariant())];

    /// <summary>The file of the truth, in the folder of the packs, where no other is named.</summary>
    public const string TruthName = "catch-up-truth.json";

    public required string? Students { get; init; }

    public required ulong? Seed { get; init; }

    public required string? Out { get; init; }

    public required string? Truth { get; init; }

    public required double OddShare { get; init; }

    public required string Level { get; init; }

    public required IReadOnlyList<string> Formats { get; init; }

    public required string? ClassName { get; init; }

    public required string? Date { get; init; }

    public required bool IsLetter { get; init; }

    public required bool IsLarge { get; init; }

    public required string? Tint { get; init; }

    public required bool AsJson { get; init; }

    /// <summary>Class and date, as printed.</summary>
    public PaperOccasion Occasion => PaperOccasion.Unsaid with { ClassName = ClassName, Date = Date };

    /// <summary>How the papers are printed.</summary>
    public PaperLook Look => new(IsLetter ? SheetSize.Letter : SheetSize.A4, IsLarge, Tint?.ToLowerInvariant());

    /// <summary>How much they help.</summary>
    public SupportLevel Support => Enum.Parse<SupportLevel>(Level, ignoreCase: true);

    /// <summary>Full path of the truth's file.</summary>
    public string TruthPath(Surroundings surroundings) => Truth is string path ? surroundings.FullPath(path) : Path.Combine(surroundings.FullPath(Out!), TruthName);

    /// <summary>Whether everything needed was said and is known; else each fault is told on standard error.</summary>
    public bool AreUnderstood(string? practical, Surroundings surroundings)
    {
        const string example = "For example: calx catch-up magnesium-oxide --students away.txt --seed 2026 --out catch-up";
        string[] missing =
        [
            .. practical is null ? (string[])["which practical?"] : [],
            .. Students is null ? (string[])["which students? Name a file of them with --students."] : [],
            .. Seed is null ? (string[])["which seed? A number of your own with --seed: the same number and name give the same pack again."] : [],
            .. Out is null ? (string[])["into which folder? Name it with --out."] : [],
        ];
        string[] unknown =
        [
            .. KnownLevels.Contains(Level) ? [] : (string[])[$"--level: '{Level}' is not known; expected {string.Join(", ", KnownLevels)}"],
            .. Formats.Where(f => !KnownFormats.Contains(f)).Select(f => $"--format: '{f}' is not known; expected {string.Join(", ", KnownFormats)}"),
            .. Tint is null || (Tint.Length == 6 && Tint.All(char.IsAsciiHexDigit))
                ? [] : (string[])[$"--tint: '{Tint}' is no colour; six hexadecimal digits were expected, such as fff4d6"],
        ];
        foreach (string fault in missing.Concat(unknown))
        {
            surroundings.Error.WriteLine($"calx catch-up: {fault}");
        }

        if (missing.Length > 0)
        {
            surroundings.Error.WriteLine($"calx catch-up: {example}");
        }

        return missing.Length + unknown.Length == 0;
    }
}
