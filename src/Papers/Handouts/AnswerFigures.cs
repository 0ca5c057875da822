using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>With how many decimals an answer is shown: a difference of masses with those of the balance, everything else with three
/// significant figures.</summary>
internal static class AnswerFigures
{
    private const int Significant = 3;
    private const int MostDecimals = 10;

    /// <summary>The decimals, or null where they would be too many or the value too large to have any.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="value">Its value, or one like it.</param>
    /// <param name="ofBalance">Decimals of the balance.</param>
    public static int? Decimals(AnswerDefinition answer, double value, int ofBalance)
    {
        bool isDifference = answer.Formula.Nodes.All(n => n is NameTerm or BinaryOperation { Operator: Operator.Add or Operator.Subtract });
        if (isDifference)
        {
            return ofBalance;
        }

        int places = value == 0 ? Significant - 1 : Significant - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return places is >= 0 and <= MostDecimals ? places : null;
    }
}
