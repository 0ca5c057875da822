using System.CommandLine;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Output;
using Calx.App.Serving;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Commands;

/// <summary><c>calx practicals learned</c>: what past lessons teach of a practical, and what of it is accepted.</summary>
internal static class LearnedCommand
{
    private const string Name = "practicals learned";

    /// <summary>Who enters it, as the audit names what is done without a page.</summary>
    private const string By = "command line";

    public static Verb Create()
    {
        var practical = new Argument<string?>("PRACTICAL") { Description = "an id from 'calx practicals', or the path of a YAML file of your own", Arity = ArgumentArity.ZeroOrOne };
        var className = new Option<string?>("--class") { Description = "for one class; otherwise for any of the school", HelpName = "NAME" };
        Option<long?> groups = NumberOption.Whole("--groups", "groups of the next lesson; otherwise 12, or as many as may do the practical side by side", 1, PlanSettings.MostGroups);
        var accept = new Option<string[]>("--accept") { Description = "a number that you accept, such as time:cool; may be given several times", HelpName = "ID" };
        var takeBack = new Option<string[]>("--take-back") { Description = "an accepted number that you take back; may be given several times", HelpName = "ID" };
        var initials = new Option<string?>("--by") { Description = "your initials, kept with what you accept or take back", HelpName = "INITIALS" };
        var records = new RecordsChoice();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "learned",
            "What past lessons in your records teach of a practical: times, rates, breakages. Nothing is taken over that you do not accept.",
            [
                new("calx practicals learned magnesium-oxide", "each number before and after, and how surely it is known"),
                new("calx practicals learned magnesium-oxide --accept time:cool --by LM", "the next plans take this time, and say so"),
            ],
            (result, surroundings) => Run(
                result.GetValue(practical),
                new LearnedWish(
                    result.GetValue(className)?.Trim() ?? "", (int?)result.GetValue(groups), result.GetValue(accept) ?? [],
                    result.GetValue(takeBack) ?? [], result.GetValue(initials)?.Trim() ?? "", result.GetValue(json)),
                records.Options(result, Name, surroundings),
                surroundings),
            "Exit code 1 where nothing was learned that differs from the file; 2 where a number cannot be accepted or taken back.");
        verb.Arguments.Add(practical);
        foreach (Option option in (Option[])[className, groups, accept, takeBack, initials, .. records.All, json])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(string? practical, LearnedWish wish, ServeOptions? records, Surroundings surroundings)
    {
        if (practical is null)
        {
            surroundings.Error.WriteLine($"calx {Name}: which practical? For example: calx {Name} magnesium-oxide");
            return ExitCode.BadInput;
        }

        if (PracticalChoice.Named(Name, practical, "", records?.DataFolder, surroundings) is not Practical chosen || records is null)
        {
            return ExitCode.BadInput;
        }

        if (RecordsChoice.Missing(records, Name) is string missing)
        {
            surroundings.Error.WriteLine(missing);
            return ExitCode.BadInput;
        }

        return RecordsChoice.Open(records, Name, surroundings, (store, cancellation) => Answer(chosen, wish, store, surroundings, cancellation)).GetAwaiter().GetResult();
    }

    private static async Task<int> Answer(Practical practical, LearnedWish wish, RecordStore store, Surroundings surroundings, CancellationToken cancellation)
    {
        using var rooms = new LessonRooms(store);
        using var school = new KnownBalances(store);
        var desk = new NumberDesk(store, RecordsChoice.Clock);
        Learned learned = await new PastLessons(store, rooms, school, RecordsChoice.Clock).Of(practical, wish.ClassName, wish.Groups ?? UsualGroups.Of(practical), cancellation);
        string? fault = wish.Accept.Count == 0 ? null
            : await desk.Accept(learned, wish.Accept.Distinct().ToDictionary(id => id, string? (_) => null), wish.Initials, By, cancellation);
        fault ??= wish.TakeBack.Count == 0 ? null : await desk.TakeBack(practical, wish.ClassName, [.. wish.TakeBack.Distinct()], wish.Initials, By, cancellation);
        if (fault is not null)
        {
            surroundings.Error.WriteLine($"calx {Name}: {fault}");
            return ExitCode.BadInput;
        }

        IReadOnlyList<NumberDecision> decisions = await store.Decisions(practical.Id, cancellation);
        if (wish.AsJson)
        {
            JsonAnswer.Print(surroundings.Output, json => LearnedAnswerJson.Write(json, learned, decisions));
        }
        else
        {
            LearnedAnswerText.Write(surroundings.Output, learned, decisions);
        }

        return learned.Open.Any() || wish.Accept.Count + wish.TakeBack.Count > 0 ? ExitCode.Done : ExitCode.No;
    }
}
