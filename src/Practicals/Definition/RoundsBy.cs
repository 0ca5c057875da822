namespace Calx.Practicals.Definition;

/// <summary>How a round that is repeated until constant mass is done: it decides the words for it.</summary>
public enum RoundsBy
{
    /// <summary>Over a flame or on a hot plate: 'heat again'.</summary>
    Heating,

    /// <summary>With warm air or in a warm oven: 'dry again'.</summary>
    Drying,
}
