using System.Globalization;
using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>A formula changed by one idea or two.</summary>
internal sealed class Variant(Expression tree, Rounding? rounding, IReadOnlyList<Idea> ideas, double prior, int place)
{
    /// <summary>The changed formula.</summary>
    public Expression Tree { get; } = tree;

    /// <summary>What changed it, one or two.</summary>
    public IReadOnlyList<Idea> Ideas { get; } = ideas;

    /// <summary>How often it lies behind a wrong value, before the value is seen; judgement.</summary>
    public double Prior { get; } = prior;

    /// <summary>Where its value stands in the program.</summary>
    public int Place { get; } = place;

    /// <summary>The formula for people to read.</summary>
    public string Formula => rounding is null ? Tree.ToString() : string.Create(
        CultureInfo.InvariantCulture,
        $"{Tree}, {(rounding.Nodes.Contains(Tree, ReferenceEqualityComparer.Instance) ? "the answer" : "a value on the way")} rounded to {rounding.Digits} {Digits(rounding)}");

    private static string Digits(Rounding rounding) => (rounding.IsFigures ? "significant figure" : "decimal") + (rounding.Digits == 1 ? string.Empty : "s");
}
