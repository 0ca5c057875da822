using System.CommandLine;
using Calx.App.Commands;

namespace Calx.App;

/// <summary>The page that <c>--help</c> prints: what the command is for, its words, and an example to copy.</summary>
internal static class HelpPage
{
    public static void Write(Verb verb, TextWriter to)
    {
        to.WriteLine(Usage(verb));
        to.WriteLine();
        to.WriteLine(verb.Description);
        WriteRows(to, "Commands", verb.Subcommands.Select(c => (c.Name, c.Description)));
        WriteRows(to, "Words", verb.Arguments.Select(a => (a.Name, a.Description)));
        WriteRows(to, "Options", Options(verb));
        if (verb.Details.Length > 0)
        {
            to.WriteLine();
            to.WriteLine(verb.Details);
        }

        foreach (Example example in verb.Examples)
        {
            to.WriteLine();
            to.WriteLine($"Example: {example.Purpose}");
            to.WriteLine($"  {example.Line}");
        }
    }

    /// <summary>The words that lead to a command: <c>calx practicals check</c>.</summary>
    public static string FullName(Command command)
    {
        Symbol? parent = command.Parents.FirstOrDefault();
        return parent is Command above ? $"{FullName(above)} {command.Name}" : command.Name;
    }

    private static string Usage(Verb verb)
    {
        string words = string.Join(' ', verb.Arguments.Select(a => a.Name));
        string command = verb.Subcommands.Count > 0 && verb.Arguments.Count == 0 ? "COMMAND" : "";
        return string.Join(' ', new[] { FullName(verb), command, words, "[options]" }.Where(part => part.Length > 0));
    }

    private static IEnumerable<(string Name, string? Text)> Options(Verb verb)
    {
        foreach (Option option in verb.Options.OrderBy(o => o == verb.Help))
        {
            string value = option.HelpName is null ? "" : " " + option.HelpName;
            yield return (option.Name + value, option.Description);
        }
    }

    private static void WriteRows(TextWriter to, string heading, IEnumerable<(string Name, string? Text)> rows)
    {
        (string Name, string? Text)[] all = rows.ToArray();
        if (all.Length == 0)
        {
            return;
        }

        int width = all.Max(row => row.Name.Length) + 2;
        to.WriteLine();
        to.WriteLine(heading);
        foreach ((string name, string? text) in all)
        {
            to.WriteLine($"  {name.PadRight(width)}{text}");
        }
    }
}
