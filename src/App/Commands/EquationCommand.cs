using System.CommandLine;
using System.Text.Json;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Chemistry.Equations;
using Calx.Measurement.Numbers;

namespace Calx.App.Commands;

/// <summary><c>calx equation</c>: balances equations, or says why not.</summary>
internal static class EquationCommand
{
    public static Verb Create()
    {
        var text = new Argument<string?>("EQUATION")
        {
            Description = "an equation: \"Mg + O2 -> MgO\" (→, = and ⇌ do as well)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var file = new Option<string?>("--file") { Description = "balance each line of this file instead", HelpName = "FILE" };
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "equation",
            "The balanced equation in lowest whole numbers; or what stands in the way; or, where there are many, the elementary ones.",
            [
                new("calx equation \"Fe^2+ + MnO4^- + H^+ -> Fe^3+ + Mn^2+ + H2O\"", "charges are balanced too"),
                new("calx equation --file equations.txt --json", "one equation a line"),
            ],
            (result, surroundings) =>
                Run(result.GetValue(text), result.GetValue(file), result.GetValue(json), surroundings),
            "Exit code 1 unless every equation is balanced; 2 where one cannot be read.");
        verb.Arguments.Add(text);
        verb.Options.Add(file);
        verb.Options.Add(json);
        return verb;
    }

    private static int Run(string? text, string? file, bool asJson, Surroundings surroundings)
    {
        if ((text is null) == (file is null))
        {
            surroundings.Error.WriteLine(text is null
                ? "calx equation: which equation? For example: calx equation \"Mg + O2 -> MgO\""
                : "calx equation: give an equation or --file, not both");
            return ExitCode.BadInput;
        }

        return text is not null ? One(text, asJson, surroundings) : All(file!, asJson, surroundings);
    }

    private static int One(string text, bool asJson, Surroundings surroundings)
    {
        EquationAnswer answer = EquationAnswer.Of(text);
        if (answer.Fault is TextFault fault)
        {
            surroundings.Error.WriteLine(Fault.Line("equation", fault));
            return ExitCode.BadInput;
        }

        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, answer.Write);
        }
        else
        {
            answer.Write(surroundings.Output);
        }

        return answer.ExitCode;
    }

    private static int All(string path, bool asJson, Surroundings surroundings)
    {
        FileText file = TextFile.Read(surroundings, path, "one equation a line");
        if (file is not FileText.Read read)
        {
            surroundings.Error.WriteLine(((FileText.Unreadable)file).Line);
            return ExitCode.BadInput;
        }

        (int Number, EquationAnswer Answer)[] answers =
        [
            .. read.Text.Split('\n').Select((line, i) => (Number: i + 1, Text: line.Trim()))
                .Where(line => line.Text.Length > 0 && line.Text[0] != '#')
                .Select(line => (line.Number, EquationAnswer.Of(line.Text))),
        ];
        foreach ((int number, EquationAnswer answer) in answers.Where(a => a.Answer.Fault is not null))
        {
            surroundings.Error.WriteLine(Fault.Line(path, number, answer.Fault!.Span.Start + 1, answer.Fault.ToString()));
        }

        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => WriteAll(json, answers.Select(a => a.Answer)));
        }
        else
        {
            foreach ((_, EquationAnswer answer) in answers)
            {
                answer.Write(surroundings.Output);
            }
        }

        return answers.Select(a => a.Answer.ExitCode).DefaultIfEmpty(ExitCode.Done).Max();
    }

    private static void WriteAll(Utf8JsonWriter json, IEnumerable<EquationAnswer> answers)
    {
        json.WriteStartArray();
        foreach (EquationAnswer answer in answers)
        {
            answer.Write(json);
        }

        json.WriteEndArray();
    }
}
