using System.CommandLine;
using System.Text.Json;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Papers.SheetCheck;
using Calx.Practicals.Definition;

namespace Calx.App.Commands;

/// <summary><c>calx papers check</c>: what there is to look at on a teacher's own worksheet.</summary>
internal static class SheetCheckCommand
{
    /// <summary>In g; a balance steps more coarsely than this: even a microbalance by 0.0000001 g.</summary>
    private const double FinestStep = 0.000_000_01;

    public static Verb Create()
    {
        var file = new Argument<string?>("FILE") { Description = "your worksheet: DOCX, or plain text in UTF-8", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> practical = PracticalChoice.Create();
        Option<double?> resolution = NumberOption.Between("--resolution", "smallest step of your balance in g; 0.01 unless given", "G", FinestStep, 1000);
        Option<string?> data = PracticalChoice.CreateData();
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "check",
            "Points out what to look at on a worksheet of your own: words of measurement, units, decimals, missing readings, cautions, equations, atomic masses.",
            [
                new("calx papers check worksheet.docx --practical magnesium-oxide", "each place with what is wrong and what is expected"),
                new("calx papers check worksheet.txt --practical copper-sulfate-hydrate --resolution 0.001", "for a balance of three decimals"),
            ],
            (result, surroundings) => Run(
                result.GetValue(file), result.GetValue(practical), result.GetValue(data), (decimal?)result.GetValue(resolution) ?? CheckedSheet.UsualStepInGrams, result.GetValue(json), surroundings),
            "Exit code 1 where something is found. The file is read and never changed; nothing in it is run. What is not found is not thereby right: "
            + "cautions are looked for by their words, and your employer's risk assessment decides.");
        verb.Arguments.Add(file);
        foreach (Option option in (Option[])[practical, resolution, data, json])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(string? file, string? practicalWord, string? data, decimal stepInGrams, bool asJson, Surroundings surroundings)
    {
        if (file is null)
        {
            surroundings.Error.WriteLine("calx papers check: which file? For example: calx papers check worksheet.docx --practical magnesium-oxide");
            return ExitCode.BadInput;
        }

        if (PracticalChoice.Find("papers check", practicalWord, data, surroundings) is not Practical practical)
        {
            return ExitCode.BadInput;
        }

        switch (SheetFile.Read(surroundings.FullPath(file)))
        {
            case SheetFile.Fault fault:
                surroundings.Error.WriteLine(Fault.Line(file, 1, 1, fault.Reason));
                return ExitCode.BadInput;
            case SheetFile.Opened { Sheet: Sheet sheet }:
                foreach (string note in sheet.Notes)
                {
                    surroundings.Error.WriteLine($"{file}: {note}");
                }

                return Tell(file, practical, CheckedSheet.Findings(sheet, practical, stepInGrams), asJson, surroundings);
            default:
                throw new InvalidOperationException("No other case of a worksheet exists.");
        }
    }

    private static int Tell(string file, Practical practical, IReadOnlyList<SheetFinding> findings, bool asJson, Surroundings surroundings)
    {
        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => Write(json, file, practical, findings));
        }
        else
        {
            Write(surroundings.Output, file, practical, findings);
        }

        return findings.Count == 0 ? ExitCode.Done : ExitCode.No;
    }

    private static void Write(TextWriter output, string file, Practical practical, IReadOnlyList<SheetFinding> findings)
    {
        foreach (SheetFinding finding in findings)
        {
            output.WriteLine(finding.Text.Length == 0 ? finding.Place : $"{finding.Place}: {finding.Text}");
            output.WriteLine($"  {finding.Problem}.");
            output.WriteLine($"  Expected: {finding.Expected}.");
            output.WriteLine();
        }

        output.WriteLine(findings.Count switch
        {
            0 => $"{file}: nothing found to look at, checked for {practical.Title}.",
            1 => $"{file}: one thing to look at, checked for {practical.Title}.",
            _ => FormattableString.Invariant($"{file}: {findings.Count} things to look at, checked for {practical.Title}."),
        });
    }

    private static void Write(Utf8JsonWriter json, string file, Practical practical, IReadOnlyList<SheetFinding> findings)
    {
        json.WriteStartObject();
        json.WriteString("file", file);
        json.WriteString("practical", practical.Id);
        json.WriteStartArray("findings");
        foreach (SheetFinding finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("rule", finding.Rule);
            json.WriteString("place", finding.Place);
            json.WriteString("text", finding.Text);
            json.WriteString("problem", finding.Problem);
            json.WriteString("expected", finding.Expected);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
