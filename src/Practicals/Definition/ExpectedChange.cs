namespace Calx.Practicals.Definition;

/// <summary>Which way the mass goes when the reaction does what the lesson says.</summary>
public enum ExpectedChange
{
    /// <summary>It rises.</summary>
    Rises,

    /// <summary>It falls.</summary>
    Falls,

    /// <summary>It stays the same.</summary>
    Same,
}
