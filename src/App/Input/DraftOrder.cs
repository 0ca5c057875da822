using Calx.App.Output;

namespace Calx.App.Input;

/// <summary>What was said to <c>calx practicals new</c>.</summary>
/// <param name="Answers">A file of answers, or null.</param>
/// <param name="Set">Answers, each <c>key=answer</c>.</param>
/// <param name="IsExample">Whether nothing is asked.</param>
/// <param name="Out">The file to write, or null for one among the own practicals.</param>
/// <param name="Data">The data folder, or null for the usual one.</param>
internal sealed record DraftOrder(string? Answers, string[] Set, bool IsExample, string? Out, string? Data)
{
    private const string Command = "practicals new";

    /// <summary>The answers, or null after telling what is wrong on standard error; those of <c>--set</c> go before those of the file.</summary>
    public Dictionary<string, string>? Read(Surroundings surroundings)
    {
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        bool isRead = Answers is null || ReadFile(Answers, answers, surroundings);
        foreach (string said in Set)
        {
            int at = said.IndexOf('=', StringComparison.Ordinal);
            if (at <= 0)
            {
                surroundings.Error.WriteLine($"calx {Command}: --set: '{said}' is not understood; expected a question and its answer, such as usual=2.5");
                isRead = false;
            }
            else
            {
                answers[said[..at].Trim()] = said[(at + 1)..].Trim();
            }
        }

        return isRead ? answers : null;
    }

    private static bool ReadFile(string path, Dictionary<string, string> answers, Surroundings surroundings)
    {
        FileText file = TextFile.Read(surroundings, path, "one answer a line, such as 'usual: 2.5'");
        if (file is FileText.Unreadable unreadable)
        {
            surroundings.Error.WriteLine(unreadable.Line);
            return false;
        }

        bool isSound = true;
        int number = 0;
        foreach (string line in ((FileText.Read)file).Text.ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            string text = line.Trim();
            int at = text.IndexOf(':', StringComparison.Ordinal);
            if (text.Length == 0 || text[0] == '#')
            {
                continue;
            }

            if (at <= 0 || !answers.TryAdd(text[..at].Trim(), text[(at + 1)..].Trim()))
            {
                surroundings.Error.WriteLine(Fault.Line(path, number, 1, at <= 0 ? "a question and its answer are expected, such as 'usual: 2.5'" : $"'{text[..at].Trim()}' is answered twice"));
                isSound = false;
            }
        }

        return isSound;
    }
}
