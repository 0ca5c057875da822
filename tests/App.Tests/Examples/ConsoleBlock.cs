namespace Calx.App.Tests.Examples;

/// <summary>
/// One command of a question page and what it prints. A page holds blocks fenced as <c>console</c>; in them a line that
/// begins with <c>$ </c> is typed, and the lines up to the next such line or the end are what is then seen: standard
/// output, then standard error, then <c>(exit N)</c> where the code is not 0. A line <c>...</c> stands for any lines.
/// </summary>
internal sealed class ConsoleBlock
{
    private ConsoleBlock(string page, int line, string command, string expected)
    {
        Page = page;
        Line = line;
        Command = command;
        Expected = expected;
    }

    /// <summary>Full path of the page.</summary>
    public string Page { get; }

    /// <summary>Line of the command in the page, from 1.</summary>
    public int Line { get; }

    /// <summary>What is typed.</summary>
    public string Command { get; }

    /// <summary>What is seen, lines ended by a line feed.</summary>
    public string Expected { get; }

    /// <summary>All the commands of a page, from top to bottom.</summary>
    public static IReadOnlyList<ConsoleBlock> Of(string page)
    {
        var blocks = new List<ConsoleBlock>();
        string[] lines = File.ReadAllLines(page);
        bool inside = false;
        int start = -1;
        for (int i = 0; i < lines.Length; i++)
        {
            bool fence = lines[i].StartsWith("```", StringComparison.Ordinal);
            bool command = inside && lines[i].StartsWith("$ ", StringComparison.Ordinal);
            if (start >= 0 && (fence || command))
            {
                string seen = string.Concat(lines[(start + 1)..i].Select(line => line + "\n"));
                blocks.Add(new ConsoleBlock(page, start + 1, lines[start][2..], seen));
                start = -1;
            }

            inside = fence ? lines[i] == "```console" : inside;
            start = command ? i : start;
        }

        return blocks;
    }

    /// <summary>Whether a run printed what the page says.</summary>
    public bool IsAnsweredBy(string seen)
    {
        string[] parts = ("\n" + Expected).Split("\n...\n");
        string rest = "\n" + seen;
        if (parts.Length == 1)
        {
            return rest == parts[0];
        }

        if (!rest.StartsWith(parts[0], StringComparison.Ordinal))
        {
            return false;
        }

        int from = parts[0].Length;
        foreach (string part in parts[1..^1])
        {
            int found = rest.IndexOf("\n" + part + "\n", from, StringComparison.Ordinal);
            if (found < 0)
            {
                return false;
            }

            from = found + part.Length + 1;
        }

        string last = parts[^1].Length == 0 ? "" : "\n" + parts[^1];
        return rest.Length - from >= last.Length && rest.EndsWith(last, StringComparison.Ordinal);
    }

    /// <summary>The words of the command, quotes taken off as a shell does.</summary>
    public IReadOnlyList<string> Words()
    {
        var words = new List<string>();
        string word = "";
        char quote = '\0';
        foreach (char c in Command + " ")
        {
            if (c is '"' or '\'' && (quote == '\0' || quote == c))
            {
                quote = quote == c ? '\0' : c;
            }
            else if (c == ' ' && quote == '\0')
            {
                words.Add(word);
                word = "";
            }
            else
            {
                word += c;
            }
        }

        return words;
    }
}
