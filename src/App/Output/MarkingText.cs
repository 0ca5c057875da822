using System.Globalization;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Adjusted;
using Calx.Practicals.Marking.Prose;

namespace Calx.App.Output;

/// <summary>A marked class on the terminal: the class first, then each student.</summary>
internal static class MarkingText
{
    private const int MostIdeas = 6;

    public static void Write(TextWriter output, Practical practical, MarkedClass marked)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{practical.Title}: {marked.Works.Count} {(marked.Works.Count == 1 ? "student" : "students")} marked"));
        WriteQuestions(output, marked);
        WriteIdeas(output, marked);
        WriteGroupings(output, marked);
        WriteStudents(output, marked);
        WriteToAskAbout(output, marked);
    }

    private static void WriteQuestions(TextWriter output, MarkedClass marked)
    {
        WrappedText.Heading(output, "How each answer went");
        var columns = new Columns("lrrrr");
        columns.AddHeading(20, "answer", "answered", "accepted", "of these carried", "for you to look at");
        foreach (QuestionResult question in marked.Questions)
        {
            columns.Add(question.Answer.Label, Number(question.Answered), Number(question.Accepted), Number(question.Carried), Number(question.Unread));
        }

        columns.Write(output);
    }

    private static void WriteIdeas(TextWriter output, MarkedClass marked)
    {
        if (marked.Ideas.Count == 0)
        {
            return;
        }

        WrappedText.Heading(output, "Likely misunderstandings (candidates; the rates behind them are judgement)");
        var columns = new Columns("rl");
        columns.Add("share", "what may lie behind it");
        foreach (IdeaShare idea in marked.Ideas.Take(MostIdeas))
        {
            columns.Add(string.Create(CultureInfo.InvariantCulture, $"{100 * idea.Share:0} %"), idea.Idea.Label);
        }

        columns.Write(output);
    }

    private static void WriteGroupings(TextWriter output, MarkedClass marked)
    {
        WrappedText.Heading(output, "To begin the next lesson with");
        foreach (Grouping grouping in marked.Groupings)
        {
            WrappedText.Write(output, $"{string.Join(", ", grouping.Students)} ({grouping.Title}): {grouping.Question}", first: "  - ", then: "    ");
        }
    }

    private static void WriteStudents(TextWriter output, MarkedClass marked)
    {
        WrappedText.Heading(output, "Students");
        foreach (MarkedWork work in marked.Works)
        {
            WrappedText.Write(
                output, string.Create(CultureInfo.InvariantCulture, $"{work.Work.Student}  {work.Total} of {work.Of}{Waiting(work)}. {work.Feedback}"), first: "  ", then: "    ");
            foreach (AnswerMark mark in work.Answers.Where(m => m.Verdict is Verdict.Wrong && m.Ideas is { Candidates.Count: > 0 }))
            {
                string ideas = string.Join("; ", mark.Ideas!.Candidates.Take(3).Select(c => string.Create(
                    CultureInfo.InvariantCulture, $"{string.Join(" and ", c.Ideas.Select(i => i.Label))} ({100 * c.Probability:0} %)")));
                string apart = mark.Ideas.TellApart is string id ? $"; the value of {id} would tell" : string.Empty;
                WrappedText.Write(output, $"{mark.Answer.Id} {mark.Given}: {ideas}{apart}", first: "      ", then: "        ");
            }

            foreach (AnswerMark mark in work.Answers.Where(m => m.IsUnread))
            {
                WrappedText.Write(output, $"{mark.Answer.Id}, for you to look at: '{mark.Given}' ({Reason(mark.Verdict)})", first: "      ", then: "        ");
            }

            foreach (AnswerMark mark in work.Answers.Where(m => m.Overruled is not null))
            {
                WrappedText.Write(
                    output, string.Create(CultureInfo.InvariantCulture, $"{mark.Answer.Id}: {mark.Marks} by you, {mark.ComputedMarks} by the rules{(mark.Overruled!.Reason.Length > 0 ? "; " + mark.Overruled.Reason : "")}"),
                    first: "      ", then: "        ");
            }

            foreach (ProseMark prose in work.Prose.Where(p => p.IsWaiting))
            {
                WriteProse(output, prose);
            }
        }
    }

    private static void WriteProse(TextWriter output, ProseMark prose)
    {
        WrappedText.Write(output, $"{prose.Question.Id}, to be marked by you: {prose.Text}", first: "      ", then: "        ");
        foreach (WordUse word in prose.Words.Where(w => w.IsMisused))
        {
            WrappedText.Write(output, $"'{prose.Text.Substring(word.Start, word.Length)}': {word.Advice}", first: "        - ", then: "          ");
        }
    }

    private static void WriteToAskAbout(TextWriter output, MarkedClass marked)
    {
        if (marked.ToAskAbout.Count == 0)
        {
            return;
        }

        WrappedText.Heading(output, "To ask about, for your eyes only: chance does it too");
        foreach (AdjustedLook look in marked.ToAskAbout)
        {
            WrappedText.Write(output, look.Student is string student ? $"{student}: {look.Sentence}" : look.Sentence, first: "  - ", then: "    ");
        }
    }

    private static string Reason(Verdict verdict) => verdict switch
    {
        Verdict.Unreadable unreadable => unreadable.Reason,
        Verdict.CannotMark cannot => cannot.Reason,
        _ => string.Empty,
    };

    private static string Waiting(MarkedWork work) => (work.Waiting + work.Unread) switch
    {
        0 => string.Empty,
        1 => " so far, 1 answer waits for you",
        int waiting => string.Create(CultureInfo.InvariantCulture, $" so far, {waiting} answers wait for you"),
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
