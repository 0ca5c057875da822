using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads a rate law over elapsed minutes as the fraction of what is left of the limiting material that reacts.</summary>
internal sealed class RateLawReader(IdTables ids)
{
    private static readonly Dictionary<string, bool> Orders = new() { ["first"] = true, ["second"] = false };

    /// <summary>The fraction, or null where the event has no rate law.</summary>
    /// <remarks>
    /// First order: 1 - 2^(-t/T), whatever went before. Second order after a minutes: of the whole 1/(1 + a/T) is left, later
    /// 1/(1 + (a + t)/T), so that t/(T + a + t) of what is left reacts. T is the first half-life.
    /// </remarks>
    public Expression? Fraction(FileMap react)
    {
        if (react.Map("rate", "a rate law: { order: first, halfLife: ..., minutes: ... }") is not FileMap map)
        {
            return null;
        }

        bool first = map.Word("order", Orders);
        Expression half = map.Formula("halfLife", ids.Parameters, ids.Gauges);
        Expression minutes = map.Formula("minutes", ids.Parameters, ids.Gauges);
        Expression after = map.OptionalFormula("after", ids.Parameters, ids.Gauges) ?? Expression.Number(0);
        map.Close();
        string law = first ? "1 - 2^(-_t / _h)" : "_t / (_h + _a + _t)";
        return Expression.Parse(law).Value.Substitute("_t", minutes).Substitute("_h", half).Substitute("_a", after);
    }
}
