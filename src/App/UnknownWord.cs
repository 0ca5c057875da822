using System.CommandLine;
using Calx.App.Commands;

namespace Calx.App;

/// <summary>What to say of a word that the command line does not know.</summary>
internal static class UnknownWord
{
    /// <summary>Names the word and, where a known one is near, that one.</summary>
    public static string Sentence(string word, Verb verb)
    {
        string kind = word.StartsWith('-') ? "option" : verb.Subcommands.Count > 0 ? "command" : "word";
        string? near = Nearest(word, Known(verb));
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

    private static string? Nearest(string word, IEnumerable<string> known)
    {
        // A third of the letters may be wrong: nearer than that, chance agreement is rare among so few words.
        string? nearest = null;
        int least = (word.Length / 3) + 1;
        foreach (string name in known)
        {
            int distance = EditDistance(word, name);
            if (distance < least)
            {
                (nearest, least) = (name, distance);
            }
        }

        return nearest;
    }

    /// <summary>Letters to change, add or leave out to turn one word into the other (Levenshtein 1966).</summary>
    private static int EditDistance(string from, string to)
    {
        int[] row = new int[to.Length + 1];
        for (int j = 0; j <= to.Length; j++)
        {
            row[j] = j;
        }

        for (int i = 1; i <= from.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                int change = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[to.Length];
    }
}
