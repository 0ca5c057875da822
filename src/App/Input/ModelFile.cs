using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using YamlDotNet.RepresentationModel;

namespace Calx.App.Input;

/// <summary>Reads the file of <c>calx propagate</c>: result, model, inputs, correlations (docs/guide/command-line.md).</summary>
internal sealed class ModelFile
{
    /// <summary>A model of a measurement has a handful of inputs; far more is another file than was meant.</summary>
    private const int MostInputs = 200;

    private readonly FileFaults faults;

    private ModelFile(FileFaults faults) => this.faults = faults;

    /// <summary>The model, or null where <paramref name="faults"/> got what is wrong.</summary>
    public static MeasurementModel? Read(string text, FileFaults faults)
    {
        YamlMappingNode? root = YamlText.Read(text, faults);
        return root is null ? null : new ModelFile(faults).Model(root);
    }

    private MeasurementModel? Model(YamlMappingNode root)
    {
        Dictionary<string, YamlNode> keys = KeysOf(root, "result", "model", "inputs", "correlations");
        string result = keys.TryGetValue("result", out YamlNode? name) ? TextOf(name) ?? "result" : "result";
        Expression? formula = keys.TryGetValue("model", out YamlNode? model) ? FormulaOf(model) : Missing<Expression>(root, "model", "a formula such as m / v");
        List<ModelInput>? inputs = keys.TryGetValue("inputs", out YamlNode? listed)
            ? InputsOf(listed)
            : Missing<List<ModelInput>>(root, "inputs", "a name with its law for each input");
        List<InputCorrelation> correlations = keys.TryGetValue("correlations", out YamlNode? pairs) ? CorrelationsOf(pairs) : [];
        if (faults.Any || formula is null || inputs is null)
        {
            return null;
        }

        if (MeasurementModel.FaultOf(formula, inputs, correlations) is TextFault fault)
        {
            faults.Add((YamlScalarNode)model!, fault);
            return null;
        }

        return new MeasurementModel(result, formula, inputs, correlations, MolarMassOf);
    }

    private static double MolarMassOf(string formula) => Formula.Parse(formula).Value.MolarMass(AtomicWeights.Iupac2024).Value;

    private Expression? FormulaOf(YamlNode node)
    {
        if (node is not YamlScalarNode { Value: string text } scalar)
        {
            faults.Add(node, "expected a formula such as m / v");
            return null;
        }

        Parsed<Expression> parsed = Expression.Parse(text);
        if (!parsed.Succeeded)
        {
            faults.Add(scalar, parsed.Fault);
            return null;
        }

        foreach (MolarMassTerm term in parsed.Value.Nodes.OfType<MolarMassTerm>())
        {
            Parsed<Formula> formula = Formula.Parse(term.Formula);
            TextFault? fault = formula.Succeeded ? formula.Value.FindMolarMass(AtomicWeights.Iupac2024).Fault : formula.Fault;
            if (fault is not null)
            {
                var place = new SourceSpan(term.FormulaSpan.Start + fault.Span.Start, fault.Span.Length);
                faults.Add(scalar, new TextFault(place, fault.Reason, fault.Suggestion));
            }
        }

        return parsed.Value;
    }

    private List<ModelInput>? InputsOf(YamlNode node)
    {
        if (node is not YamlMappingNode { Children.Count: > 0 and <= MostInputs } map)
        {
            faults.Add(node, $"expected 1 to {MostInputs} inputs, each a name with its law: 'm: {{normal: [52.31, 0.02]}}'");
            return null;
        }

        var inputs = new List<ModelInput>();
        foreach ((YamlNode key, YamlNode value) in map.Children)
        {
            string? name = TextOf(key);
            InputDistribution? law = LawOf(value);
            if (name is null || law is null)
            {
                continue;
            }

            try
            {
                inputs.Add(new ModelInput(name, law));
            }
            catch (ArgumentException fault)
            {
                faults.Add(key, FirstSentence(fault));
            }
        }

        return inputs;
    }

    private InputDistribution? LawOf(YamlNode node)
    {
        if (node is not YamlMappingNode { Children.Count: 1 } map || TextOf(map.Children[0].Key) is not string law)
        {
            faults.Add(node, "expected one law with its numbers, such as {normal: [52.31, 0.02]}");
            return null;
        }

        (YamlNode key, YamlNode value) = map.Children[0];
        if (!InputLaw.Known.TryGetValue(law, out InputLaw? known))
        {
            faults.Add(key, $"there is no law '{law}'; expected one of {string.Join(", ", InputLaw.Known.Keys)}");
            return null;
        }

        double[]? numbers = NumbersOf(value, known.Numbers.Length, $"{law} takes [{string.Join(", ", known.Numbers)}]");
        try
        {
            return numbers is null ? null : known.Make(numbers);
        }
        catch (ArgumentException fault)
        {
            faults.Add(value, $"{law}: {FirstSentence(fault)}");
            return null;
        }
    }

    private List<InputCorrelation> CorrelationsOf(YamlNode node)
    {
        var pairs = new List<InputCorrelation>();
        if (node is not YamlSequenceNode list)
        {
            faults.Add(node, "expected a list of [a, b, r]");
            return pairs;
        }

        foreach (YamlNode entry in list)
        {
            if (entry is not YamlSequenceNode { Children.Count: 3 } triple
                || TextOf(triple.Children[0]) is not string a
                || TextOf(triple.Children[1]) is not string b
                || NumberOf(triple.Children[2]) is not double r)
            {
                faults.Add(entry, "expected two names of inputs and their correlation: [m, v, 0.2]");
                continue;
            }

            try
            {
                pairs.Add(new InputCorrelation(a, b, r));
            }
            catch (ArgumentException fault)
            {
                faults.Add(entry, FirstSentence(fault));
            }
        }

        return pairs;
    }

    private double[]? NumbersOf(YamlNode node, int count, string expected)
    {
        IEnumerable<YamlNode> entries = node is YamlSequenceNode list ? list.Children : [node];
        double?[] numbers = [.. entries.Select(NumberOf)];
        if (numbers.Length == count && numbers.All(n => n is not null))
        {
            return [.. numbers.Select(n => n!.Value)];
        }

        faults.Add(node, $"{expected}, {count} finite number{(count == 1 ? "" : "s")}");
        return null;
    }

    private static double? NumberOf(YamlNode node) =>
        node is YamlScalarNode { Value: string text }
        && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
        && double.IsFinite(number) ? number : null;

    private static string? TextOf(YamlNode node) => (node as YamlScalarNode)?.Value;

    private Dictionary<string, YamlNode> KeysOf(YamlMappingNode map, params string[] known)
    {
        var keys = new Dictionary<string, YamlNode>(StringComparer.Ordinal);
        foreach ((YamlNode key, YamlNode value) in map.Children)
        {
            if (TextOf(key) is string name && known.Contains(name))
            {
                keys[name] = value;
            }
            else
            {
                faults.Add(key, $"'{TextOf(key)}' is no key of a model; expected {string.Join(", ", known)}");
            }
        }

        return keys;
    }

    private T? Missing<T>(YamlMappingNode root, string key, string expected)
        where T : class
    {
        faults.Add(root, $"there is no '{key}'; expected {expected}");
        return null;
    }

    // The library's messages are plain sentences, followed by the name of the C# parameter in brackets.
    private static string FirstSentence(ArgumentException fault)
    {
        string line = fault.Message.Split('\n')[0];
        int parameter = line.IndexOf(" (Parameter", StringComparison.Ordinal);
        return (parameter < 0 ? line : line[..parameter]).TrimEnd('.');
    }
}
