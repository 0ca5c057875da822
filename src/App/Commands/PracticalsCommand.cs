using System.CommandLine;
using System.Text.Json;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Own;
using Calx.Practicals.Definition;

namespace Calx.App.Commands;

/// <summary><c>calx practicals</c>: what there is, those that come along and those of one's own.</summary>
internal static class PracticalsCommand
{
    public static Verb Create()
    {
        Option<string?> data = PracticalChoice.CreateData();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "practicals",
            "The practicals at hand: those that Calx brings along, and your own files.",
            [new("calx practicals", "their ids and titles")],
            (result, surroundings) => List(result.GetValue(data), result.GetValue(json), surroundings));
        verb.Options.Add(data);
        verb.Options.Add(json);
        verb.Subcommands.Add(PracticalsCheckCommand.Create());
        verb.Subcommands.Add(PracticalsNewCommand.Create());
        verb.Subcommands.Add(LearnedCommand.Create());
        return verb;
    }

    private static int List(string? data, bool asJson, Surroundings surroundings)
    {
        IReadOnlyList<OwnFile> own = OwnFolder.In(surroundings.DataFolder(data)).All();
        (Practical Practical, string? File)[] all =
        [
            .. BuiltInPracticals.All.Select(p => (p, (string?)null)),
            .. own.Where(f => f.Practical is not null).Select(f => (f.Practical!, (string?)f.Name)).OrderBy(f => f.Item1.Id, StringComparer.Ordinal),
        ];
        foreach (string fault in own.Where(f => f.Practical is null).SelectMany(f => f.Faults.Select(fault => fault.StartsWith(f.Name, StringComparison.Ordinal) ? fault : $"{f.Name}: {fault}")))
        {
            surroundings.Error.WriteLine(fault);
        }

        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => Write(json, all));
            return ExitCode.Done;
        }

        foreach ((Practical practical, string? file) in all)
        {
            surroundings.Output.WriteLine($"{practical.Id}: {practical.Title}{(file is null ? "" : $" (your own, version {practical.Version})")}");
            var columns = new Columns("ll");
            foreach (ReadingDefinition reading in practical.Readings)
            {
                columns.Add(reading.Id, reading.Label);
            }

            columns.Write(surroundings.Output);
        }

        return ExitCode.Done;
    }

    private static void Write(Utf8JsonWriter json, IEnumerable<(Practical Practical, string? File)> all)
    {
        json.WriteStartArray();
        foreach ((Practical practical, string? file) in all)
        {
            json.WriteStartObject();
            json.WriteString("id", practical.Id);
            json.WriteString("title", practical.Title);
            json.WriteNumber("version", practical.Version);
            json.WriteString("file", file);
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
}
