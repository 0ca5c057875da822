using System.CommandLine;
using Calx.App.Checking;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Own;
using Calx.Practicals.Drafting;

namespace Calx.App.Commands;

/// <summary><c>calx practicals new</c>: a practical of one's own from the answers to a few plain questions.</summary>
internal static class PracticalsNewCommand
{
    private const string Name = "practicals new";

    public static Verb Create()
    {
        var answers = new Option<string?>("--answers") { Description = "take the answers from this file, a line each: 'equation: MgCO3 -> MgO + CO2'", HelpName = "FILE" };
        var set = new Option<string[]>("--set") { Description = "one answer; may be given several times: --set title=\"Heating chalk\"", HelpName = "KEY=ANSWER" };
        var example = new Option<bool>("--example") { Description = "ask nothing: what is not answered takes its default" };
        var file = new Option<string?>("--out") { Description = "the file to write, a new one; otherwise among your own practicals in the data folder", HelpName = "FILE" };
        Option<string?> data = PracticalChoice.CreateData();
        var verb = new Verb(
            "new",
            "Asks what is weighed and what happens, and writes a practical's file that you can go on editing.",
            [
                new("calx practicals new", "asks, and writes the file among your own practicals"),
                new("calx practicals new --answers answers.txt --out chalk.yaml", "from a file of answers"),
                new("calx practicals new --example --set happens=gas --out gas.yaml", "the example of another kind of practical"),
            ],
            (result, surroundings) => Run(
                new DraftOrder(result.GetValue(answers), result.GetValue(set) ?? [], result.GetValue(example), result.GetValue(file), result.GetValue(data)), surroundings),
            $"The questions that can be answered: {string.Join(", ", Keys())}. 'happens' is one of heated, gas, closed and product. A file that is there already is left as it is: exit code 2. "
            + "Hazards are never made up: the check at the end names each that you have to look up.");
        foreach (Option option in (Option[])[answers, set, example, file, data])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static IEnumerable<string> Keys() => Enum.GetValues<DraftFamily>().SelectMany(f => DraftQuestions.Of(f)).Select(q => q.Key).Distinct();

    private static int Run(DraftOrder order, Surroundings surroundings)
    {
        bool asks = order is { Answers: null, Set: [], IsExample: false };
        if (asks && !surroundings.HasPerson)
        {
            surroundings.Error.WriteLine($"calx {Name}: nobody is there to be asked. Give --answers FILE, --set KEY=ANSWER, or --example");
            return ExitCode.BadInput;
        }

        if ((asks ? DraftTalk.Ask(surroundings) : order.Read(surroundings)) is not Dictionary<string, string> answers)
        {
            return ExitCode.BadInput;
        }

        var draft = Draft.Of(answers);
        foreach ((string key, string fault) in draft.Faults)
        {
            surroundings.Error.WriteLine($"calx {Name}: {key}: {fault}");
        }

        return draft is { Id: string id, Text: string text } ? Write(id, text, order, surroundings) : ExitCode.BadInput;
    }

    private static int Write(string id, string text, DraftOrder order, Surroundings surroundings)
    {
        var own = OwnFolder.In(surroundings.DataFolder(order.Data));
        string shown = order.Out ?? Path.Combine(own.Path, $"{id}.yaml");
        string path = surroundings.FullPath(shown);
        if (order.Out is null && own.FilesCalled(id).FirstOrDefault(f => f != Path.GetFileName(path)) is string same)
        {
            surroundings.Error.WriteLine(Fault.Line(Path.Combine(own.Path, same), 1, 1, $"this is your practical '{id}' already; give the new one another id: --set id=..."));
            return ExitCode.BadInput;
        }

        if (Path.Exists(path))
        {
            surroundings.Error.WriteLine(Fault.Line(shown, 1, 1, "there is such a file already, and it is left as it is; give another name with --out, or another id"));
            return ExitCode.BadInput;
        }

        try
        {
            if (order.Out is null)
            {
                Directory.CreateDirectory(own.Path);
            }

            NewFile.Create(path, text, surroundings.Cancellation());
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(shown, 1, 1, $"it cannot be written there ({NewFile.ReasonOf(failure)})"));
            return ExitCode.CannotWrite;
        }

        Tell(FullCheck.Of(text, shown, surroundings.Cancellation()), id, order, surroundings);
        return ExitCode.Done;
    }

    private static void Tell(FullCheck check, string id, DraftOrder order, Surroundings surroundings)
    {
        surroundings.Output.WriteLine($"Written: {check.File}");
        CheckText.WriteFindings(surroundings.Error, check);
        CheckText.Write(surroundings.Output, check);
        surroundings.Output.WriteLine($"Next: edit it, run 'calx practicals check {check.File}' until it is in order, then 'calx plan {(order.Out is null ? id : check.File)}'.");
    }
}
