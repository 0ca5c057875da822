using System.CommandLine;
using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Output;
using Calx.App.Serving;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Tables;

namespace Calx.App.Commands;

/// <summary><c>calx mark</c>: a class's calculations marked, each student from the own readings.</summary>
internal static class MarkCommand
{
    private const string Name = "mark";

    public static Verb Create()
    {
        var options = new MarkOptions();
        var verb = new Verb(
            Name,
            "Marks a class's calculations, each student from the own readings: error carried forward, and which idea each wrong value may come from.",
            [
                new("calx mark answers.xlsx --practical magnesium-oxide", "marks, feedback and what the class had in common"),
                new("calx mark answers.csv --practical magnesium-oxide --csv marks.csv", "with a table of the marks"),
                new("calx mark answers.csv --practical magnesium-oxide --class 9F --xlsx marks.xlsx --slips slips.pdf", "with a workbook and slips to hand out"),
                new("calx mark answers.csv --lesson 7k2m9x4c1v0b", "readings from the lesson's records, each student's from the own group"),
                new("calx mark answers.csv --practical magnesium-oxide --truth catch-up-truth.json", "those who were away, each from the own pack"),
            ],
            (result, surroundings) => Run(options.Words(result), () => options.Records.Options(result, Name, surroundings), surroundings),
            "Ideas are candidates with probabilities, never a verdict on a student; their rates are judgement. Answers in words are left to the teacher.");
        verb.Arguments.Add(options.File);
        foreach (Option option in options.All)
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(MarkWords words, Func<ServeOptions?> records, Surroundings surroundings)
    {
        if (words.File is null && words.Lesson is null)
        {
            surroundings.Error.WriteLine("calx mark: which file? For example: calx mark answers.csv --practical magnesium-oxide");
            return ExitCode.BadInput;
        }

        if (words is { Lesson: not null, Truth: not null })
        {
            surroundings.Error.WriteLine("calx mark: --lesson and --truth both say which readings to mark by; expected one of them");
            return ExitCode.BadInput;
        }

        LessonMarks? lesson = null;
        string? className = null;
        if (words.Lesson is string id && KeptLesson.Find(id, records(), surroundings, out lesson, out className) is var code and not ExitCode.Done)
        {
            return code;
        }

        words = lesson is null ? words : words with { Outputs = words.Outputs.OfLesson(words.Lesson!, className, lesson.View.Room.Lesson.Date) };
        if (MarkFiles.Check(words.Outputs, surroundings) is var checking and not ExitCode.Done)
        {
            return checking;
        }

        Practical? practical = lesson is not null && words.Practical is null ? lesson.View.Practical : PracticalChoice.Find(Name, words.Practical, words.Data, surroundings);
        if (practical is null || words.Policy(surroundings) is not MarkingPolicy policy || AtomicWeightChoice.Of(words.Sets, surroundings) is not { } sets
            || Table(words, practical, lesson, surroundings) is not MarkingTable.Taken table || Overrulings(words, lesson, surroundings) is not { } overrulings)
        {
            return ExitCode.BadInput;
        }

        // How a lesson is marked was said on its page, and holds where nothing else is said here.
        policy = lesson is not null && !words.SaysHow ? lesson.Settings.Policy : policy;
        sets = lesson is not null && words.Sets.Length == 0 ? lesson.Settings.Sets : sets;
        IReadOnlyList<string>? asked = words.File is null ? lesson?.Settings.Asked : null;
        MarkedClass marked = new Marker(practical, policy, sets, asked).Mark(table.Works, overrulings);
        return Write(words, practical, marked, table, surroundings);
    }

    private static MarkingTable.Taken? Table(MarkWords words, Practical practical, LessonMarks? lesson, Surroundings surroundings)
    {
        if (words.File is null)
        {
            return new MarkingTable.Taken(lesson!.Works.Works, [], []);
        }

        OwnReadings? own = lesson is not null ? OwnReadings.Of(lesson.Works) : words.Truth is string truth ? PackTruthFile.Read(truth, practical, surroundings) : null;
        return words.Truth is not null && own is null ? null
            : AnswersFile.Read(words.File, practical, surroundings) is not MarkingTable.Taken table ? null
            : own is null ? table : own.Into(table);
    }

    private static IReadOnlyList<Overruling>? Overrulings(MarkWords words, LessonMarks? lesson, Surroundings surroundings)
    {
        IReadOnlyList<Overruling> kept = lesson?.Works.Overrulings ?? [];
        return words.Overrulings is not string path ? kept
            : OverrulingsFile.Read(path, surroundings) is { } own ? [.. kept, .. own] : null;
    }

    private static int Write(MarkWords words, Practical practical, MarkedClass marked, MarkingTable.Taken table, Surroundings surroundings)
    {
        if (words.Csv is string path && !TryWrite(path, marked, surroundings))
        {
            return ExitCode.CannotWrite;
        }

        if (MarkFiles.Write(words.Outputs, practical, marked, surroundings) is var written and not ExitCode.Done)
        {
            return written;
        }

        if (words.AsJson)
        {
            JsonAnswer.Print(surroundings.Output, json => MarkingJson.Write(json, practical, marked, table));
            return ExitCode.Done;
        }

        MarkingText.Write(surroundings.Output, practical, marked);
        AnswersFile.Tell(words.File ?? $"lesson {words.Lesson}", table, surroundings);
        foreach (LeftOverruling left in marked.LeftOverrulings)
        {
            surroundings.Error.WriteLine($"calx mark: this mark of yours is not used: {left.Reason}");
        }

        return ExitCode.Done;
    }

    /// <summary>A table that is there already may have been worked on: it is never replaced.</summary>
    private static bool TryWrite(string path, MarkedClass marked, Surroundings surroundings)
    {
        string full = surroundings.FullPath(path);
        if (Path.Exists(full))
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, "there is such a file already, and it is left as it is; give another name"));
            return false;
        }

        try
        {
            NewFile.Create(full, MarkingCsv.Of(marked), surroundings.Cancellation());
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"the marks cannot be written there ({NewFile.ReasonOf(failure)})"));
            return false;
        }
    }
}
