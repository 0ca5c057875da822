using System.CommandLine;
using System.Text.Json;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Practicals.Definition;

namespace Calx.App.Commands;

/// <summary><c>calx practicals</c>: what there is, and the check of a file of one's own.</summary>
internal static class PracticalsCommand
{
    public static Verb Create()
    {
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "practicals",
            "The practicals that Calx brings along.",
            [new("calx practicals", "their ids and titles")],
            (result, surroundings) => List(result.GetValue(json), surroundings));
        verb.Options.Add(json);
        verb.Subcommands.Add(CreateCheck());
        return verb;
    }

    private static Verb CreateCheck()
    {
        var file = new Argument<string?>("FILE") { Description = "a practical's file (YAML)", Arity = ArgumentArity.ZeroOrOne };
        var verb = new Verb(
            "check",
            "Names every fault of a practical's file with its line and column.",
            [new("calx practicals check my-practical.yaml", "is this file right?")],
            (result, surroundings) => Check(result.GetValue(file), surroundings));
        verb.Arguments.Add(file);
        return verb;
    }

    private static int List(bool asJson, Surroundings surroundings)
    {
        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, Write);
            return ExitCode.Done;
        }

        foreach (Practical practical in BuiltInPracticals.All)
        {
            surroundings.Output.WriteLine($"{practical.Id}: {practical.Title}");
            var columns = new Columns("ll");
            foreach (ReadingDefinition reading in practical.Readings)
            {
                columns.Add(reading.Id, reading.Label);
            }

            columns.Write(surroundings.Output);
        }

        return ExitCode.Done;
    }

    private static void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray();
        foreach (Practical practical in BuiltInPracticals.All)
        {
            json.WriteStartObject();
            json.WriteString("id", practical.Id);
            json.WriteString("title", practical.Title);
            json.WriteTexts("reactions", practical.Reactions.Select(r => r.EquationText));
            json.WriteStartArray("readings");
            foreach (ReadingDefinition reading in practical.Readings)
            {
                json.WriteStartObject();
                json.WriteString("id", reading.Id);
                json.WriteString("label", reading.Label);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("quantities");
            foreach (QuantityDefinition quantity in practical.Quantities)
            {
                json.WriteStartObject();
                json.WriteString("id", quantity.Id);
                json.WriteString("label", quantity.Label);
                json.WriteString("unit", quantity.Unit);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static int Check(string? path, Surroundings surroundings)
    {
        if (path is null)
        {
            surroundings.Error.WriteLine("calx practicals check: which file? For example: calx practicals check my-practical.yaml");
            return ExitCode.BadInput;
        }

        PracticalReading? reading = PracticalChoice.FromFile(path, surroundings);
        foreach (DefinitionFault warning in reading?.Warnings ?? [])
        {
            surroundings.Error.WriteLine($"{warning} (to look at)");
        }

        if (reading?.Practical is not Practical practical)
        {
            return ExitCode.BadInput;
        }

        surroundings.Output.WriteLine($"{path}: {practical.Title} (version {practical.Version}) is in order.");
        return ExitCode.Done;
    }
}
