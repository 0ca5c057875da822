using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Own;
using Calx.Practicals.Choosing;
using Calx.Practicals.Definition;

namespace Calx.App.Commands;

/// <summary><c>calx practicals</c>: what there is, those that come along and those of one's own.</summary>
internal static class PracticalsCommand
{
    public static Verb Create()
    {
        Option<string?> data = PracticalChoice.CreateData();
        var narrow = new ShelfOptions();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "practicals",
            "The practicals at hand: those that Calx brings along, and your own files.",
            [
                new("calx practicals", "their ids and titles, what happens in each and what it needs"),
                new("calx practicals --happens loses --minutes 60 --step 0.01", "what loses mass on heating, can be done in an hour and seen on such a balance"),
                new("calx practicals --no-flame --about copper", "practicals with copper and without a naked flame"),
            ],
            (result, surroundings) => narrow.Wish(result, surroundings) is ShelfWish wish ? List(wish, result.GetValue(data), result.GetValue(json), surroundings) : ExitCode.BadInput,
            "Exit code 1 where nothing on the shelf is what is looked for. Minutes are those of one group, waiting for balances left out; 'calx plan' knows the class.");
        foreach (Option option in (Option[])[.. narrow.All, data, json])
        {
            verb.Options.Add(option);
        }

        verb.Subcommands.Add(PracticalsCheckCommand.Create());
        verb.Subcommands.Add(PracticalsNewCommand.Create());
        verb.Subcommands.Add(LearnedCommand.Create());
        return verb;
    }

    private static int List(ShelfWish wish, string? data, bool asJson, Surroundings surroundings)
    {
        IReadOnlyList<OwnFile> own = OwnFolder.In(surroundings.DataFolder(data)).All();
        (Practical Practical, string? File)[] all =
        [
            .. BuiltInPracticals.All.Select(p => (p, (string?)null)),
            .. own.Where(f => f.Practical is not null).Select(f => (f.Practical!, (string?)f.Name)).OrderBy(f => f.Item1.Id, StringComparer.Ordinal),
        ];
        int there = all.Length;
        all = [.. all.Where(p => wish.Fits(p.Practical))];
        foreach (string fault in own.Where(f => f.Practical is null).SelectMany(f => f.Faults.Select(fault => fault.StartsWith(f.Name, StringComparison.Ordinal) ? fault : $"{f.Name}: {fault}")))
        {
            surroundings.Error.WriteLine(fault);
        }

        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => Write(json, all));
            return all.Length > 0 ? ExitCode.Done : ExitCode.No;
        }

        if (all.Length == 0)
        {
            surroundings.Output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"None of the {there} practicals is what you look for. Leave out one of the wishes."));
            return ExitCode.No;
        }

        foreach ((Practical practical, string? file) in all)
        {
            surroundings.Output.WriteLine($"{practical.Id}: {practical.Title}{(file is null ? "" : $" (your own, version {practical.Version})")}");
            surroundings.Output.WriteLine($"  {string.Join("; ", ShelfWords.Of(PracticalFacts.Of(practical)))}");
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
            var facts = PracticalFacts.Of(practical);
            json.WriteString("family", PracticalFamilies.WordOf(facts.Family));
            json.WriteStartObject("minutes");
            json.WriteFigure("whole", facts.Minutes.Whole);
            json.WriteFigure("shortest", facts.Minutes.Shortest);
            json.WriteEndObject();
            json.WriteFigure("change", facts.ChangeInGrams);
            json.WriteFigure("coarsestStep", facts.CoarsestStepInGrams);
            json.WriteBoolean("flame", facts.HasFlame);
            json.WriteBoolean("fumeCupboard", facts.NeedsFumeCupboard);
            json.WriteBoolean("demonstration", facts.IsDemonstration);
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
