using System.Text.Json;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Adjusted;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Prose;
using Calx.Practicals.Marking.Tables;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Readings;

namespace Calx.App.Output;

/// <summary>A marked class as one JSON document: docs/schemas/marking.schema.json.</summary>
internal static class MarkingJson
{
    public static void Write(Utf8JsonWriter json, Practical practical, MarkedClass marked, MarkingTable.Taken table)
    {
        json.WriteStartObject();
        json.WriteString("practical", practical.Id);
        json.WriteNumber("version", practical.Version);
        json.WriteStartArray("students");
        foreach (MarkedWork work in marked.Works)
        {
            WriteStudent(json, work);
        }

        json.WriteEndArray();
        WriteClass(json, marked);
        WriteLeft(json, marked);
        WriteRejected(json, table);
        json.WriteTexts("notes", table.Notes);
        json.WriteEndObject();
    }

    private static void WriteStudent(Utf8JsonWriter json, MarkedWork work)
    {
        json.WriteStartObject();
        json.WriteString("student", work.Work.Student);
        json.WriteString("group", work.Work.Group);
        json.WriteStartArray("answers");
        foreach (AnswerMark mark in work.Answers)
        {
            WriteAnswer(json, mark);
        }

        json.WriteEndArray();
        json.WriteStartArray("prose");
        foreach (ProseMark prose in work.Prose)
        {
            WriteProse(json, prose);
        }

        json.WriteEndArray();
        json.WriteNumber("total", work.Total);
        json.WriteNumber("of", work.Of);
        json.WriteNumber("waiting", work.Waiting);
        json.WriteNumber("unread", work.Unread);
        json.WriteString("feedback", work.Feedback);
        json.WriteEndObject();
    }

    private static void WriteAnswer(Utf8JsonWriter json, AnswerMark mark)
    {
        json.WriteStartObject();
        json.WriteString("id", mark.Answer.Id);
        json.WriteString("given", mark.Given);
        if (mark.ExpectedText is string expected)
        {
            json.WriteString("expected", expected);
        }
        else
        {
            json.WriteFigure("expected", mark.Expected);
        }

        json.WriteFigure("own", mark.Own);
        json.WriteNumber("marks", mark.Marks);
        json.WriteNumber("of", mark.Answer.Marks);
        json.WriteNumber("computed", mark.ComputedMarks);
        json.WriteString("overruled", mark.Overruled?.Reason);
        json.WriteString("verdict", MarkingWords.Of(mark.Verdict));
        json.WriteBoolean("carried", mark.IsCarried);
        json.WriteString("figures", mark.Figures switch { FiguresFault.TooFew => "too-few", FiguresFault.TooMany => "too-many", _ => "right" });
        json.WriteBoolean("wrongUnit", mark.HasWrongUnit);
        json.WriteStartArray("ideas");
        foreach (IdeaCandidate candidate in mark.Ideas?.Candidates ?? [])
        {
            WriteIdea(json, candidate);
        }

        json.WriteEndArray();
        json.WriteFigure("somethingElse", mark.Ideas?.SomethingElse);
        json.WriteString("tellApart", mark.Ideas?.TellApart);
        json.WriteString("feedback", mark.Feedback);
        json.WriteEndObject();
    }

    private static void WriteIdea(Utf8JsonWriter json, IdeaCandidate candidate)
    {
        json.WriteStartObject();
        json.WriteString("idea", candidate.Ideas[0].Id);
        json.WriteString("and", candidate.Ideas.Count > 1 ? candidate.Ideas[1].Id : null);
        json.WriteFigure("probability", candidate.Probability);
        json.WriteFigure("chance", candidate.Chance);
        json.WriteString("formula", candidate.Formula);
        json.WriteFigure("value", candidate.Value);
        json.WriteEndObject();
    }

    private static void WriteProse(Utf8JsonWriter json, ProseMark prose)
    {
        json.WriteStartObject();
        json.WriteString("id", prose.Question.Id);
        json.WriteString("text", prose.Text);
        json.WriteStartArray("words");
        foreach (WordUse word in prose.Words)
        {
            json.WriteStartObject();
            json.WriteNumber("start", word.Start);
            json.WriteNumber("length", word.Length);
            json.WriteString("word", prose.Text.AsSpan(word.Start, word.Length));
            json.WriteBoolean("misused", word.IsMisused);
            json.WriteString("advice", word.Advice);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteFigure("marks", prose.Marks);
        json.WriteNumber("of", prose.Of);
        json.WriteString("comment", prose.Comment);
        json.WriteEndObject();
    }

    private static void WriteClass(Utf8JsonWriter json, MarkedClass marked)
    {
        json.WriteStartObject("class");
        json.WriteStartArray("ideas");
        foreach (IdeaShare idea in marked.Ideas)
        {
            json.WriteStartObject();
            json.WriteString("idea", idea.Idea.Id);
            json.WriteFigure("share", idea.Share);
            json.WriteTexts("students", idea.Students);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("questions");
        foreach (QuestionResult question in marked.Questions)
        {
            json.WriteStartObject();
            json.WriteString("id", question.Answer.Id);
            json.WriteNumber("answered", question.Answered);
            json.WriteNumber("accepted", question.Accepted);
            json.WriteNumber("carried", question.Carried);
            json.WriteNumber("unread", question.Unread);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("groupings");
        foreach (Grouping grouping in marked.Groupings)
        {
            json.WriteStartObject();
            json.WriteString("title", grouping.Title);
            json.WriteString("idea", grouping.Idea?.Id);
            json.WriteString("question", grouping.Question);
            json.WriteTexts("students", grouping.Students);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("toAskAbout");
        foreach (AdjustedLook look in marked.ToAskAbout)
        {
            json.WriteStartObject();
            json.WriteString("student", look.Student);
            json.WriteString("what", look.What);
            json.WriteString("question", look.Sentence);
            json.WriteFigure("chance", look.Chance);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteLeft(Utf8JsonWriter json, MarkedClass marked)
    {
        json.WriteStartArray("leftOverrulings");
        foreach (LeftOverruling left in marked.LeftOverrulings)
        {
            json.WriteStartObject();
            json.WriteString("student", left.Overruling.Student);
            json.WriteString("answer", left.Overruling.Answer);
            json.WriteNumber("marks", left.Overruling.Marks);
            json.WriteString("reason", left.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRejected(Utf8JsonWriter json, MarkingTable.Taken table)
    {
        json.WriteStartArray("rejected");
        foreach (RejectedCell cell in table.Rejected)
        {
            json.WriteStartObject();
            json.WriteString("cell", cell.Cell.ToString());
            json.WriteString("heading", cell.Heading);
            json.WriteString("text", cell.Text);
            json.WriteString("reason", cell.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
