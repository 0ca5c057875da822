using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.App.Commands;

/// <summary><c>calx formula</c>: molar mass and composition of a substance.</summary>
internal static class FormulaCommand
{
    public static Verb Create()
    {
        var text = new Argument<string?>("FORMULA")
        {
            Description = "a chemical formula: MgO, \"CuSO4·5H2O\" (a full stop or * does for the dot), \"SO4^2-\"",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<bool> json = JsonOption.Create();
        var verb = new Verb(
            "formula",
            "The molar mass of a substance with its standard uncertainty, and the share of each element by mass.",
            [
                new("calx formula \"CuSO4·5H2O\"", "the molar mass of hydrated copper(II) sulfate"),
                new("calx formula MgO --json", "the same for a program"),
            ],
            (result, surroundings) => Run(result.GetValue(text), result.GetValue(json), surroundings));
        verb.Arguments.Add(text);
        verb.Options.Add(json);
        return verb;
    }

    private static int Run(string? text, bool asJson, Surroundings surroundings)
    {
        if (text is null)
        {
            surroundings.Error.WriteLine("calx formula: which formula? For example: calx formula MgO");
            return ExitCode.BadInput;
        }

        Parsed<Formula> parsed = Formula.Parse(text);
        if (!parsed.Succeeded)
        {
            surroundings.Error.WriteLine(Fault.Line("formula", parsed.Fault));
            return ExitCode.BadInput;
        }

        Parsed<UncertainValue> mass = parsed.Value.FindMolarMass(AtomicWeights.Iupac2024);
        if (asJson)
        {
            JsonAnswer.Print(surroundings.Output, json => WriteJson(json, parsed.Value, mass));
        }
        else
        {
            WriteText(surroundings, parsed.Value, mass);
        }

        return mass.Succeeded ? ExitCode.Done : ExitCode.No;
    }

    private static void WriteJson(Utf8JsonWriter json, Formula formula, Parsed<UncertainValue> mass)
    {
        json.WriteStartObject();
        json.WriteString("formula", formula.ToString());
        json.WriteStartObject("molarMass");
        json.WriteFigure("value", mass.Succeeded ? mass.Value.Value : null);
        json.WriteFigure("standardUncertainty", mass.Succeeded ? mass.Value.StandardUncertainty : null);
        json.WriteString("unit", "g/mol");
        json.WriteString("reason", mass.Fault?.Reason);
        json.WriteEndObject();
        json.WriteStartArray("elements");
        foreach (ElementCount part in formula.Composition)
        {
            json.WriteStartObject();
            json.WriteString("symbol", part.Element.Symbol);
            json.WriteNumber("count", part.Count);
            json.WriteFigure("massFraction", mass.Succeeded ? ShareOf(part.Element, formula).Value : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteText(Surroundings surroundings, Formula formula, Parsed<UncertainValue> mass)
    {
        TextWriter output = surroundings.Output;
        output.WriteLine(formula.ToUnicode());
        if (!mass.Succeeded)
        {
            output.WriteLine($"No molar mass: {mass.Fault}.");
            return;
        }

        string figures = Figure.WithUncertainty(mass.Value.Value, mass.Value.StandardUncertainty);
        output.WriteLine($"Molar mass: {figures} g/mol (standard uncertainty)");
        output.WriteLine();
        var columns = new Columns("lrr");
        columns.Add("element", "atoms", "share of the mass");
        foreach (ElementCount part in formula.Composition)
        {
            columns.Add(
                $"{part.Element.Name} {part.Element.Symbol}",
                part.Count.ToString(CultureInfo.InvariantCulture),
                Percent(ShareOf(part.Element, formula)));
        }

        columns.Write(output);
    }

    private static UncertainValue ShareOf(Element element, Formula formula) =>
        formula.MassFraction(element, AtomicWeights.Iupac2024);

    // Two decimals: no standard atomic weight is so uncertain that a school would see it there.
    private static string Percent(UncertainValue fraction) => Figure.Fixed(100 * fraction.Value, 2) + " %";
}
