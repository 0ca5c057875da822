using Calx.App.Output;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;

namespace Calx.App.Input;

/// <summary>Which papers, as they were asked for in words.</summary>
internal sealed record PapersWords(
    IReadOnlyList<string> Set, IReadOnlyList<string> Levels, IReadOnlyList<string> Forms, string? Out, PaperOccasion Occasion, bool IsLetter, bool IsLarge, string? Tint, bool IsOneStep, ulong Seed)
{
    /// <summary>The class's file for the papers after the lesson, or null.</summary>
    public string? Results { get; init; }

    /// <summary>Whether the sheet for the wall tells the accepted value.</summary>
    public bool ShowsAccepted { get; init; }

    /// <summary>Whether the sheet for the wall is an A3 one.</summary>
    public bool IsWallA3 { get; init; }

    /// <summary>All papers.</summary>
    public const string Everything = "all";

    /// <summary>Which papers can be asked for.</summary>
    public static IReadOnlyList<string> Sets { get; } = [.. Enum.GetNames<PaperKind>().Select(n => n.ToLowerInvariant()), Everything];

    /// <summary>How much sheets can help.</summary>
    public static IReadOnlyList<string> KnownLevels { get; } = [.. Enum.GetNames<SupportLevel>().Select(n => n.ToLowerInvariant()), Everything];

    /// <summary>In which forms they can be had.</summary>
    public static IReadOnlyList<string> Formats { get; } = ["docx", "html", "xlsx", "pdf", PaperFiles.Svg, PaperFiles.Png];

    /// <summary>The forms where none is asked for: those that need no other program.</summary>
    private static readonly string[] UsualFormats = ["docx", "html", "xlsx"];

    private static readonly PaperKind[] AfterLesson = [PaperKind.Report, PaperKind.Display];

    /// <summary>What was asked for, or null after telling each fault on standard error.</summary>
    public PapersOrder? Order(Surroundings surroundings)
    {
        string[] faults =
        [
            .. Unknown("--set", Set, Sets), .. Unknown("--level", Levels, KnownLevels), .. Unknown("--format", Forms, Formats),
            .. Tint is null || (Tint.Length == 6 && Tint.All(char.IsAsciiHexDigit)) ? [] : (string[])[$"--tint: '{Tint}' is no colour; six hexadecimal digits were expected, such as fff4d6"],
            .. WithoutResults(),
        ];
        foreach (string fault in faults)
        {
            surroundings.Error.WriteLine($"calx papers: {fault}");
        }

        return faults.Length > 0 ? null : new PapersOrder(
            Chosen<PaperKind>(Set),
            Chosen<SupportLevel>(Levels),
            Forms.Count == 0 ? UsualFormats : [.. Forms.Distinct()],
            surroundings.FullPath(Out!),
            Occasion,
            new PaperLook(IsLetter ? SheetSize.Letter : SheetSize.A4, IsLarge, Tint?.ToLowerInvariant(), IsOneStep) { Wall = IsWallA3 ? SheetSize.A3 : null },
            Seed,
            Results,
            ShowsAccepted);
    }

    /// <summary>Papers after the lesson without its results, and results for none of them.</summary>
    private IEnumerable<string> WithoutResults()
    {
        string[] after = [.. Set.Intersect(AfterLesson.Select(k => k.ToString().ToLowerInvariant()))];
        if (Results is null)
        {
            return after.Select(kind => $"--set {kind}: of which results? Give --results and a class's file that 'calx analyse' reads, such as --results class.xlsx");
        }

        return Set.Count == 0 || Set.Contains(Everything) || after.Length > 0
            ? [] : ["--results: none of these papers tells results; add --set report or --set display"];
    }

    private static IEnumerable<string> Unknown(string option, IReadOnlyList<string> said, IReadOnlyList<string> known) =>
        said.Where(w => !known.Contains(w)).Select(w => $"{option}: '{w}' is not known; expected {string.Join(", ", known)}");

    private static T[] Chosen<T>(IReadOnlyList<string> said)
        where T : struct, Enum =>
        said.Count == 0 || said.Contains(Everything)
            ? Enum.GetValues<T>() : [.. said.Select(s => Enum.Parse<T>(s, ignoreCase: true)).Distinct()];
}
