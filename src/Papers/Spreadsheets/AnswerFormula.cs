using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.Papers.Spreadsheets;

/// <summary>An answer as a live formula: empty while something that it needs is missing, a dash where it has no value.</summary>
/// <param name="cells">The cells of a reading in the order of its weighings, or the one cell of an answer.</param>
/// <param name="molarMass">Defined name of a molar mass.</param>
internal sealed class AnswerFormula(Func<string, IReadOnlyList<string>> cells, Func<string, string> molarMass)
{
    /// <summary>What stands where masses cancel and nothing can be divided by them.</summary>
    public const string NoValue = "–";

    /// <summary>The formula, without the sign of equality.</summary>
    public string Of(AnswerDefinition answer)
    {
        string value = $"IFERROR({new FormulaText(name => Last(cells(name)), molarMass).Of(answer.Formula)},\"{NoValue}\")";
        return answer.Formula.Names.Count == 0
            ? value : string.Create(CultureInfo.InvariantCulture, $"IF({Present(answer.Formula.Names)}<{answer.Formula.Names.Count},\"\",{value})");
    }

    /// <summary>How many of the names have a value. A reading that is taken again has one as soon as one of its weighings is there.</summary>
    private string Present(IReadOnlyList<string> names)
    {
        string[] once = [.. names.Select(cells).Where(c => c.Count == 1).Select(c => c[0])];
        IEnumerable<string> again = names.Select(cells).Where(c => c.Count > 1).Select(c => $"MIN(1,COUNT({string.Join(',', c)}))");
        return string.Join('+', [.. once.Length == 0 ? [] : (string[])[$"COUNT({string.Join(',', once)})"], .. again]);
    }

    /// <summary>In a formula a repeated reading stands for its last weighing.</summary>
    private static string Last(IReadOnlyList<string> weighings) => weighings.Skip(1).Aggregate(
        weighings[0], (earlier, cell) => $"IF(ISNUMBER({cell}),{cell},{earlier})");
}
