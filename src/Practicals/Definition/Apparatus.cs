namespace Calx.Practicals.Definition;

/// <summary>What a drawing can show: the closed vocabulary of parts, in the order in which it is told to people. Words and
/// nesting are in <see cref="ApparatusRules"/>.</summary>
public enum Apparatus
{
    /// <summary>Heat-resistant mat.</summary>
    Mat,

    /// <summary>Tripod.</summary>
    Tripod,

    /// <summary>Pipe-clay triangle.</summary>
    Triangle,

    /// <summary>Gauze.</summary>
    Gauze,

    /// <summary>Gas burner.</summary>
    Burner,

    /// <summary>Spirit burner.</summary>
    SpiritBurner,

    /// <summary>Cap of a spirit burner.</summary>
    Cap,

    /// <summary>Tea light.</summary>
    Candle,

    /// <summary>Heat without saying from what: an arrow.</summary>
    Heat,

    /// <summary>Crucible.</summary>
    Crucible,

    /// <summary>Lid of a crucible.</summary>
    Lid,

    /// <summary>Evaporating basin.</summary>
    Basin,

    /// <summary>Beaker.</summary>
    Beaker,

    /// <summary>Metal can.</summary>
    Can,

    /// <summary>Conical flask.</summary>
    Flask,

    /// <summary>Test tube.</summary>
    Tube,

    /// <summary>Reduction tube: of hard glass, with a small hole near its closed end.</summary>
    ReductionTube,

    /// <summary>Gas that is led into a reduction tube through a bung.</summary>
    Gas,

    /// <summary>Gas that burns at the hole of a reduction tube.</summary>
    Jet,

    /// <summary>Filter funnel with its paper.</summary>
    Filter,

    /// <summary>Wide jar.</summary>
    Jar,

    /// <summary>Lid pushed on a jar.</summary>
    Cover,

    /// <summary>Plastic bottle.</summary>
    Bottle,

    /// <summary>Stopper or cap in or on a neck.</summary>
    Stopper,

    /// <summary>Loose plug of wool in a neck, which lets gas out.</summary>
    Plug,

    /// <summary>Stand with a clamp.</summary>
    Clamp,

    /// <summary>Balance with its pan.</summary>
    Balance,

    /// <summary>Leads that join instruments in one loop.</summary>
    Leads,

    /// <summary>Low-voltage supply, its positive terminal on the left.</summary>
    Supply,

    /// <summary>Ammeter.</summary>
    Ammeter,

    /// <summary>Variable resistor.</summary>
    Resistor,

    /// <summary>Holder across a beaker that keeps strips apart.</summary>
    Holder,

    /// <summary>Strip of metal.</summary>
    Strip,

    /// <summary>Crucible tongs, lying.</summary>
    Tongs,

    /// <summary>Powder in a vessel.</summary>
    Powder,

    /// <summary>Crystals in a vessel.</summary>
    Crystals,

    /// <summary>Coiled ribbon in a vessel.</summary>
    Ribbon,

    /// <summary>Liquid in a vessel.</summary>
    Liquid,
}
