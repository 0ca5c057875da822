using Calx.App.Output;
using Calx.Practicals.Drafting;

namespace Calx.App.Input;

/// <summary>Asks a person the questions of a draft, one after another. Enter alone takes the default.</summary>
internal static class DraftTalk
{
    /// <summary>An answer that is not understood is asked for again so often.</summary>
    private const int Tries = 20;

    /// <summary>The answers, or null where the person left.</summary>
    public static Dictionary<string, string>? Ask(Surroundings surroundings)
    {
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        surroundings.Error.WriteLine("A practical of your own. Enter alone takes what stands in brackets; everything can be changed in the file later.");
        if (!Ask(DraftQuestions.Of(DraftFamily.Heated)[0], answers, surroundings))
        {
            return null;
        }

        // What stands in brackets follows from what was answered before: a title from the equation.
        int count = Draft.Of(answers).Questions.Count;
        for (int at = 1; at < count; at++)
        {
            if (!Ask(Draft.Of(answers).Questions[at], answers, surroundings))
            {
                return null;
            }
        }

        return answers;
    }

    private static bool Ask(DraftQuestion question, Dictionary<string, string> answers, Surroundings surroundings)
    {
        if (question.Choices.Any(c => c.Word != c.Meaning))
        {
            foreach (DraftOption choice in question.Choices)
            {
                surroundings.Error.WriteLine($"  {choice.Word,-8} {choice.Meaning}");
            }
        }

        string hint = question.Hint.Length > 0 ? $" ({question.Hint})" : "";
        string usual = question.Default.Length > 0 ? $" [{question.Default}]" : "";
        for (int tried = 0; tried < Tries; tried++)
        {
            if (surroundings.Ask($"{question.Ask}{hint}{usual}: ") is not string typed)
            {
                surroundings.Error.WriteLine();
                surroundings.Error.WriteLine("calx practicals new: left half-way; nothing was written");
                return false;
            }

            // Only this answer: what hangs on others is looked at when all are there.
            answers[question.Key] = typed.Trim();
            if (Draft.Of(answers).Faults.GetValueOrDefault(question.Key) is not string fault)
            {
                return true;
            }

            surroundings.Error.WriteLine($"  {fault}.");
            answers.Remove(question.Key);
        }

        surroundings.Error.WriteLine("calx practicals new: this answer was not understood; nothing was written");
        return false;
    }
}
