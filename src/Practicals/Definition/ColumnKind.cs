namespace Calx.Practicals.Definition;

/// <summary>How a ready-made mass came about; it decides its uncertainty.</summary>
public enum ColumnKind
{
    /// <summary>Read on a balance that was set to zero with the vessel on it.</summary>
    Tared,

    /// <summary>Subtracted by somebody from two weighings.</summary>
    Difference,
}
