using System.CommandLine;
using Calx.App.Commands;
using Calx.Measurement.Numbers;

namespace Calx.App;

/// <summary>What to say of a word that the command line does not know.</summary>
internal static class UnknownWord
{
    /// <summary>Names the word and, where a known one is near, that one.</summary>
    public static string Sentence(string word, Verb verb)
    {
        string kind = word.StartsWith('-') ? "option" : verb.Subcommands.Count > 0 && verb.Arguments.Count == 0 ? "command" : "word";
        string? near = Slips.Nearest(word, Known(verb));
        return near is null
            ? $"'{word}' is not a known {kind}"
            : $"'{word}' is not a known {kind}; did you mean {near}?";
    }

    private static IEnumerable<string> Known(Verb verb)
    {
        foreach (Command command in verb.Subcommands)
        {
            yield return command.Name;
        }

        foreach (Option option in verb.Options)
        {
            yield return option.Name;
        }
    }
}
