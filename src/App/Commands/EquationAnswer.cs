using System.Text.Json;
using Calx.Chemistry.Equations;
using Calx.Measurement.Numbers;

namespace Calx.App.Commands;

/// <summary>What came of one equation, as JSON (docs/schemas/equation.schema.json) and as text.</summary>
internal sealed class EquationAnswer
{
    private readonly string text;
    private readonly Equation? equation;
    private readonly BalancingResult? result;

    private EquationAnswer(string text, Equation? equation, TextFault? fault)
    {
        this.text = text;
        this.equation = equation;
        Fault = fault;
        result = equation?.Balance();
    }

    /// <summary>Why the equation cannot be read, or null.</summary>
    public TextFault? Fault { get; }

    /// <summary>The exit code that this equation alone would give.</summary>
    public int ExitCode => result switch
    {
        null => App.ExitCode.BadInput,
        BalancingResult.Balanced => App.ExitCode.Done,
        _ => App.ExitCode.No,
    };

    private string? Reason => result switch
    {
        null => Fault!.ToString(),
        BalancingResult.CannotBalance cannot => cannot.Reason,
        BalancingResult.ManyBalances many => many.Reason,
        BalancingResult.Undecided undecided => undecided.Reason,
        _ => null,
    };

    public static EquationAnswer Of(string text)
    {
        Parsed<Equation> parsed = Equation.Parse(text);
        return new EquationAnswer(text, parsed.Succeeded ? parsed.Value : null, parsed.Fault);
    }

    public void Write(Utf8JsonWriter json)
    {
        var balanced = result as BalancingResult.Balanced;
        json.WriteStartObject();
        json.WriteString("outcome", result switch
        {
            null => "unreadable",
            BalancingResult.Balanced => "balanced",
            BalancingResult.ManyBalances => "many",
            BalancingResult.Undecided => "undecided",
            _ => "impossible",
        });
        json.WriteString("balanced", balanced?.Text);
        if (balanced is null)
        {
            json.WriteNull("coefficients");
        }
        else
        {
            WriteNumbers(json, "coefficients", balanced.Coefficients);
        }

        json.WriteStartArray("others");
        foreach (IReadOnlyList<long> other in (result as BalancingResult.ManyBalances)?.Elementary ?? [])
        {
            json.WriteStartArray();
            foreach (long coefficient in other)
            {
                json.WriteNumberValue(coefficient);
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteString("reason", Reason);
        json.WriteEndObject();
    }

    public void Write(TextWriter output)
    {
        if (result is BalancingResult.Balanced balanced)
        {
            output.WriteLine(equation!.ToUnicode(balanced.Coefficients));
            return;
        }

        output.WriteLine($"{text}: {Reason}");
        foreach (IReadOnlyList<long> other in (result as BalancingResult.ManyBalances)?.Elementary ?? [])
        {
            output.WriteLine($"  {equation!.ToUnicode(other)}");
        }
    }

    private static void WriteNumbers(Utf8JsonWriter json, string key, IReadOnlyList<long> numbers)
    {
        json.WriteStartArray(key);
        foreach (long number in numbers)
        {
            json.WriteNumberValue(number);
        }

        json.WriteEndArray();
    }
}
