using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Output;
using Calx.Practicals.Choosing;
using Calx.Practicals.Definition;

namespace Calx.App.Input;

/// <summary>The options by which the list of practicals is narrowed.</summary>
internal sealed class ShelfOptions
{
    /// <summary>In g and in min: what no balance and no lesson passes.</summary>
    private const double CoarsestStep = 10;

    private const double LongestLesson = 600;

    private readonly Option<string?> happens = new("--happens") { Description = $"what happens: {string.Join(", ", PracticalFamilies.Words.Keys)}", HelpName = "WORD" };
    private readonly Option<double?> minutes = NumberOption.FromTo("--minutes", "the minutes at hand, parts that go to another lesson or to the technician left out", "MIN", 1, LongestLesson);
    private readonly Option<double?> step = NumberOption.FromTo("--step", "the smallest step of your balances in g, such as 0.01", "G", 1e-6, CoarsestStep);
    private readonly Option<bool> noFlame = new("--no-flame") { Description = "without a naked flame" };
    private readonly Option<bool> noFumeCupboard = new("--no-fume-cupboard") { Description = "without a fume cupboard" };
    private readonly Option<bool> demonstration = new("--demonstration") { Description = "only what the teacher shows" };
    private readonly Option<string?> about = new("--about") { Description = "words in its title, question, id or substances, such as \"copper carbonate\"", HelpName = "WORDS" };

    /// <summary>All of them, in the order of the help page.</summary>
    public IReadOnlyList<Option> All => [happens, minutes, step, noFlame, noFumeCupboard, demonstration, about];

    /// <summary>What is looked for, or null after telling what is not understood on standard error.</summary>
    public ShelfWish? Wish(ParseResult result, Surroundings surroundings)
    {
        string? word = result.GetValue(happens);
        if (word is not null && ShelfWords.Unknown(word) is string reason)
        {
            surroundings.Error.WriteLine($"calx practicals: --happens: {reason}");
            return null;
        }

        return new ShelfWish
        {
            Family = word is null ? null : PracticalFamilies.Words[word],
            Minutes = result.GetValue(minutes),
            StepInGrams = result.GetValue(step),
            NoFlame = result.GetValue(noFlame),
            NoFumeCupboard = result.GetValue(noFumeCupboard),
            DemonstrationOnly = result.GetValue(demonstration),
            Words = (result.GetValue(about) ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries),
        };
    }
}
