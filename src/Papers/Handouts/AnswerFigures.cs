using System.Globalization;
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
    /// <param name="practical">The practical, whose other instruments have decimals of their own.</param>
    public static int? Decimals(AnswerDefinition answer, double value, int ofBalance, Practical practical)
    {
        bool isDifference = answer.Formula.Nodes.All(n => n is NameTerm or BinaryOperation { Operator: Operator.Add or Operator.Subtract });
        if (isDifference)
        {
            int[] own = [.. practical.Readings.Where(r => answer.Formula.Names.Contains(r.Id)).Select(r => r.Errors?.Step.Decimals).OfType<int>()];
            return own.Length == 0 ? ofBalance : own.Min();
        }

        int places = value == 0 ? Significant - 1 : Significant - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return places is >= 0 and <= MostDecimals ? places : null;
    }

    /// <summary>Where it has no decimals: three significant figures, with zeros and not a power of ten as far as people read zeros.</summary>
    public static string Rounded(double value)
    {
        double size = value == 0 ? 0 : Math.Floor(Math.Log10(Math.Abs(value)));
        double step = Math.Pow(10, size - Significant + 1);
        return size is >= Significant and < 6
            ? (Math.Round(value / step) * step).ToString("F0", CultureInfo.InvariantCulture) : value.ToString("G3", CultureInfo.InvariantCulture);
    }
}
