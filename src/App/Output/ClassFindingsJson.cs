using System.Text.Json;
using Calx.Chemistry.Amounts;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.App.Output;

/// <summary>The class's part of the findings' JSON document.</summary>
internal static class ClassFindingsJson
{
    public static void Write(Utf8JsonWriter json, ClassFindings findings)
    {
        Write(json, findings.Practical, findings.Class);
        json.WriteStartArray("arms");
        foreach (ArmFindings arm in findings.Arms)
        {
            json.WriteStartObject();
            json.WriteString("id", arm.Arm?.Id);
            json.WriteString("label", arm.Label);
            json.WriteTexts("groups", arm.Groups.Select(g => g.Name));
            Write(json, findings.Practical, arm.Result);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Practical practical, ClassResult result)
    {
        json.WriteStartObject("class");
        json.WriteStartObject("quantities");
        foreach (QuantityDefinition quantity in practical.Quantities)
        {
            WriteQuantity(json, quantity, result.Find(quantity.Id));
        }

        json.WriteEndObject();
        SeriesJson.Write(json, result.Curve);
        WriteLine(json, result.Line);
        WriteChange(json, result.Change);
        WriteAccepted(json, result.Accepted);
        WriteFormula(json, result.Formula);
        WriteEquations(json, result.Equations);
        json.WriteTexts("conclusion", result.Conclusion);
        DiagnosisJson.Write(json, result.SharedCauses);
        json.WriteEndObject();
    }

    private static void WriteQuantity(Utf8JsonWriter json, QuantityDefinition quantity, ClassQuantity? found)
    {
        json.WriteStartObject(quantity.Id);
        json.WriteFigure("value", found?.Value);
        json.WriteFigure("standardUncertainty", found?.StandardUncertainty);
        json.WriteIntervalOrNull("interval", found?.Interval);
        json.WriteFigure("median", found?.Median);
        json.WriteFigure("within", found?.Within);
        json.WriteFigure("between", found?.Between);
        json.WriteFigure("common", found?.CommonStandardUncertainty);
        json.WriteNumber("n", found?.Count ?? 0);
        json.WriteString("unit", quantity.Unit);
        if (found?.WithAllGroups is PooledValue all)
        {
            json.WriteStartObject("withAllGroups");
            json.WriteFigure("value", all.Value);
            json.WriteFigure("standardUncertainty", all.StandardUncertainty);
            json.WriteIntervalOrNull("interval", all.Interval);
            json.WriteNumber("n", all.Count);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("withAllGroups");
        }

        json.WriteString("reason", found is null ? $"No group that is pooled gives the {quantity.Label}." : null);
        json.WriteEndObject();
    }

    private static void WriteLine(Utf8JsonWriter json, ProductLine line)
    {
        var fitted = line as ProductLine.Fitted;
        json.WriteStartObject("line");
        json.WriteString("x", fitted?.X.Id);
        json.WriteString("y", fitted?.Y.Id);
        json.WriteFigure("theorySlope", fitted?.TheorySlope);
        WriteFit(json, "throughOrigin", fitted?.ThroughOrigin);
        WriteFit(json, "free", fitted?.Free);
        json.WriteString("reason", line switch
        {
            ProductLine.None none => none.Reason,
            ProductLine.Fitted { Free: null } => "A line with an intercept needs three groups whose samples differ.",
            _ => null,
        });
        json.WriteEndObject();
    }

    private static void WriteFit(Utf8JsonWriter json, string key, YorkLine? fit)
    {
        if (fit is null)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        json.WriteFigure("slope", fit.LineWithScatter.Slope);
        json.WriteFigure("slopeStandardUncertainty", fit.LineWithScatter.SlopeStandardUncertainty);
        json.WriteFigure("intercept", fit.LineWithScatter.Intercept);
        json.WriteFigure("interceptStandardUncertainty", fit.LineWithScatter.InterceptStandardUncertainty);
        json.WriteFigure("chiSquaredPerDegree", fit.ReducedChiSquared);
        json.WriteNumber("n", fit.Count);
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, ChangeEvidence change)
    {
        json.WriteStartObject("change");
        json.WriteString("sentence", change.Sentence);
        switch (change)
        {
            case ChangeEvidence.Direction direction:
                json.WriteNumber("rose", direction.Rose);
                json.WriteNumber("fell", direction.Fell);
                json.WriteFigure("signTest", direction.SignTestP);
                json.WriteFigure("permutationTest", direction.PermutationP);
                json.WriteBoolean("shown", direction.Shown);
                break;
            case ChangeEvidence.Sameness sameness:
                json.WriteFigure("band", sameness.BandInGrams);
                json.WriteFigure("equivalenceTest", sameness.P);
                json.WriteBoolean("shown", sameness.Shown);
                break;
            default:
                json.WriteBoolean("shown", false);
                break;
        }

        json.WriteEndObject();
    }

    private static void WriteAccepted(Utf8JsonWriter json, AcceptedResult accepted)
    {
        var compared = accepted as AcceptedResult.Compared;
        json.WriteStartObject("accepted");
        json.WriteString("quantity", compared?.Value.Quantity.Id);
        json.WriteFigure("value", compared?.Accepted);
        json.WriteFigure("distance", compared?.Distance);
        json.WriteFigure("p", compared?.P);
        json.WriteBoolean("biased", compared?.IsBiased ?? false);
        json.WriteTexts("causesThatPull", compared?.CausesThatPull.Select(c => c.Cause) ?? []);
        json.WriteString("reason", (accepted as AcceptedResult.None)?.Reason);
        json.WriteEndObject();
    }

    private static void WriteFormula(Utf8JsonWriter json, FormulaRanking? formula)
    {
        var ranked = formula as FormulaRanking.Ranked;
        json.WriteStartObject("formula");
        json.WriteStartArray("candidates");
        foreach (FormulaCandidate candidate in ranked?.Likeliest(0.99) ?? [])
        {
            json.WriteStartObject();
            json.WriteString("formula", candidate.Formula);
            json.WriteFigure("probability", candidate.Probability);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteFigure("noneOfThese", ranked?.NoneOfThese);
        json.WriteString("reason", formula switch
        {
            null => "This practical asks for no formula.",
            FormulaRanking.Undetermined undetermined => undetermined.Reason,
            _ => null,
        });
        json.WriteEndObject();
    }

    private static void WriteEquations(Utf8JsonWriter json, IReadOnlyList<EquationChoice> equations)
    {
        json.WriteStartArray("equations");
        foreach (EquationChoice choice in equations)
        {
            json.WriteStartObject();
            json.WriteString("id", choice.Alternative.Id);
            json.WriteString("equation", choice.Alternative.EquationText);
            json.WriteFigure("expected", choice.Expected);
            json.WriteFigure("p", choice.P);
            json.WriteBoolean("fits", choice.Fits);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
