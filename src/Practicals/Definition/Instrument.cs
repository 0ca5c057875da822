namespace Calx.Practicals.Definition;

/// <summary>What a reading is taken with.</summary>
public enum Instrument
{
    /// <summary>A balance: the mass of what stands on its pan.</summary>
    Balance,

    /// <summary>A stop clock.</summary>
    Clock,

    /// <summary>A thermometer.</summary>
    Thermometer,

    /// <summary>A measuring cylinder, burette, pipette or gas syringe.</summary>
    VolumeMeasure,

    /// <summary>An ammeter.</summary>
    Ammeter,

    /// <summary>A meter of electric charge.</summary>
    Coulometer,
}
