using System.Collections.Frozen;

namespace Calx.Practicals.Readings;

/// <summary>The words of headings: which say nothing, which mean the same, which turn a mass into something else.</summary>
internal static class HeadingWords
{
    private static readonly FrozenSet<string> Empty = Set(
        "the of a an and in with plus for at on to its their our my is was were this that from by no number nr et when");

    private static readonly FrozenSet<string> Filler = Set("mass total reading measure value record taken");

    private static readonly FrozenSet<string> Harmless = Set(
        "heat burn react reaction experiment cool strong strongly final ignite combust combustion ribbon powder strip "
        + "piece used weigh porcelain dry name student pupil letter code form made produce obtain start class "
        + "minute room temperature constant");

    private static readonly FrozenSet<string> Time = Set("before after reheat");

    // A heading with one of these is no weighing, or not the one its other words name. Words stand here as Stem leaves them.
    private static readonly FrozenSet<string> Turning = Set(
        "lost loss lose gain gained change chang difference increase increas decrease decreas ratio percent percentage mole mol average mean "
        + "theoretical expect yield error uncertainty accept calculate calculat content without add not minu range sum "
        + "density volume formula amount rise fall subtract until while");

    private static readonly FrozenDictionary<string, string> Same = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["weight"] = "mass", ["wt"] = "mass", ["weigh"] = "mass", ["weighting"] = "mass", ["masse"] = "mass", ["m"] = "mass",
        ["burnt"] = "burn", ["sulphate"] = "sulfate", ["aluminum"] = "aluminium", ["dried"] = "dry", ["obs"] = "observation",
        ["moles"] = "mole", ["cold"] = "cool", ["%"] = "percent",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, int> Ordinals = new Dictionary<string, int>(StringComparer.Ordinal)
    {
        ["1st"] = 1, ["first"] = 1, ["2nd"] = 2, ["second"] = 2, ["again"] = 2, ["twice"] = 2, ["3rd"] = 3, ["third"] = 3,
        ["4th"] = 4, ["fourth"] = 4, ["5th"] = 5, ["fifth"] = 5, ["6th"] = 6, ["sixth"] = 6,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether the word says nothing of what is meant.</summary>
    public static bool SaysNothing(string word) => Empty.Contains(word);

    /// <summary>Whether the word is in most headings of a table of masses.</summary>
    public static bool IsFiller(string word) => Filler.Contains(word);

    /// <summary>Whether the word may stand beside a reading's own words and change nothing.</summary>
    public static bool IsHarmless(string word) => Harmless.Contains(word);

    /// <summary>Whether the word says when.</summary>
    public static bool SaysWhen(string word) => Time.Contains(word);

    /// <summary>Whether the word turns a weighing into something else: a change, a ratio, a mean.</summary>
    public static bool Turns(string word) => Turning.Contains(word);

    /// <summary>The number that an ordinal word stands for, or null.</summary>
    public static int? Ordinal(string word) => Ordinals.TryGetValue(word, out int number) ? number : null;

    /// <summary>The word without its ending, and one word for those that mean the same.</summary>
    public static string Stem(string word)
    {
        string stem = word switch
        {
            _ when Same.TryGetValue(word, out string? same) => same,
            { Length: >= 6 } when word.EndsWith("ing", StringComparison.Ordinal) => word[..^3],
            { Length: >= 5 } when word.EndsWith("ed", StringComparison.Ordinal) => word[..^2],
            { Length: >= 4 } when word[^1] == 's' && word[^2] != 's' => word[..^1],
            _ => word,
        };
        return Same.GetValueOrDefault(stem, stem);
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
