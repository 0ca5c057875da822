using Calx.App.Learning;
using Calx.App.Pages;
using Calx.App.Pages.Learning;
using Calx.Practicals.Learning;
using Calx.Records.Lessons;

namespace Calx.App.Output;

/// <summary>What past lessons teach, on the terminal.</summary>
internal static class LearnedAnswerText
{
    public static void Write(TextWriter output, Learned learned, IReadOnlyList<NumberDecision> decisions)
    {
        output.WriteLine($"{learned.Practical.Title}: what past lessons teach{(learned.ClassName.Length > 0 ? $", for {learned.ClassName}" : "")}");
        WrappedText.Write(output, string.Join(' ', new[] { learned.RestsOn, learned.LeftInWords }.OfType<string>()), first: "  ", then: "  ");
        if (learned.Priors.Sentences.Count > 0)
        {
            output.WriteLine();
        }

        foreach (string sentence in learned.Priors.Sentences)
        {
            WrappedText.Write(output, sentence, first: "  - ", then: "    ");
        }

        LearnedChange[] open = [.. learned.Open.OrderBy(c => c.Sentence is null)];
        if (open.Length > 0)
        {
            WrappedText.Heading(output, "Numbers that you may accept with --accept");
        }

        foreach (LearnedChange change in open)
        {
            WrappedText.Write(
                output,
                $"{change.Id}: {NumberWords.Value(NumberText.After(change))}, in the file {NumberWords.Value(NumberText.Before(change))} ({change.Label}). {NumberWords.Surely(change)} {Capital(change.RestsOn)}.",
                first: "  ", then: "    ");
        }

        NumberDecision[] accepted = [.. AcceptedNumbers.Standing(decisions, learned.Practical.Version).Where(d => !d.IsTakenBack).OrderBy(d => d.ClassName, StringComparer.Ordinal).ThenBy(d => d.Number, StringComparer.Ordinal)];
        if (accepted.Length > 0)
        {
            WrappedText.Heading(output, "Accepted");
        }

        foreach (NumberDecision one in accepted)
        {
            WrappedText.Write(
                output,
                $"{one.Number}{(one.ClassName.Length > 0 ? $" of {one.ClassName}" : "")}: {NumberWords.Value(one.Became)}, in the file {NumberWords.Value(one.Was)}; {one.Initials}, {Dates.Day(one.At)}.",
                first: "  ", then: "    ");
        }
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
