using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;

namespace Calx.Measurement.Uncertainty;

/// <summary>The wording of what can be wrong with a measurement model.</summary>
internal static class ModelFaults
{
    public static string? OfNames(IReadOnlyList<string> names)
        => names.GroupBy(name => name).FirstOrDefault(same => same.Count() > 1) is { } twice
            ? $"the input {twice.Key} is given twice"
            : null;

    public static string? OfPairs(IReadOnlyList<string> names, IReadOnlyList<InputCorrelation> correlations)
    {
        var seen = new HashSet<(string, string)>();
        foreach (InputCorrelation pair in correlations)
        {
            if (!names.Contains(pair.A) || !names.Contains(pair.B))
            {
                string missing = names.Contains(pair.A) ? pair.B : pair.A;
                return $"a correlation names {missing}, which is not among the inputs";
            }

            if (!seen.Add((pair.A, pair.B)) || seen.Contains((pair.B, pair.A)))
            {
                return $"the correlation of {pair.A} and {pair.B} is given twice";
            }
        }

        return null;
    }

    public static TextFault? OfFormula(Expression model, IReadOnlyList<string> names, bool hasMolarMasses)
    {
        foreach (Expression node in model.Nodes)
        {
            if (node is NameTerm name && !names.Contains(name.Name))
            {
                return new TextFault(
                    name.Span, $"{name.Name} is not among the inputs ({string.Join(", ", names)})", Near(name.Name, names));
            }

            if (node is MolarMassTerm mass && !hasMolarMasses)
            {
                return new TextFault(mass.Span, $"the molar mass of {mass.Formula} is asked for and none can be supplied");
            }
        }

        return null;
    }

    public static TextFault? OfMatrix(double[,] matrix, IReadOnlyList<string> names)
        => CorrelationMatrix.FaultOf(matrix, names) is { } fault ? new TextFault(default, fault) : null;

    private static string? Near(string name, IReadOnlyList<string> names)
        => names.FirstOrDefault(known => Slips.Between(known, name) <= 1);
}
