using Calx.Chemistry.Elements;

namespace Calx.Chemistry.Formulas;

/// <summary>How many atoms of an element stand in a formula. <c>default</c> is no atom of hydrogen.</summary>
public readonly record struct ElementCount
{
    private readonly short index;

    /// <summary>So many atoms of an element.</summary>
    /// <param name="element">The element, or D or T.</param>
    /// <param name="count">Number of atoms, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public ElementCount(Element element, long count)
    {
        ArgumentNullException.ThrowIfNull(element);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        index = (short)element.Index;
        Count = count;
    }

    internal ElementCount(short index, long count)
    {
        this.index = index;
        Count = count;
    }

    /// <summary>The element, or D or T.</summary>
    public Element Element => ElementTable.At(index);

    /// <summary>Number of atoms.</summary>
    public long Count { get; }

    internal short Index => index;

    /// <summary>Element and number, for the caller's patterns.</summary>
    public void Deconstruct(out Element element, out long count) => (element, count) = (Element, Count);
}
