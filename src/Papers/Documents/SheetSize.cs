namespace Calx.Papers.Documents;

/// <summary>Size of a sheet.</summary>
public enum SheetSize
{
    /// <summary>210 mm by 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8.5 in by 11 in.</summary>
    Letter,

    /// <summary>297 mm by 420 mm (ISO 216), for a wall.</summary>
    A3,
}
