namespace Calx.Measurement.Weighing;

/// <summary>Accuracy class of a check weight, from the finest to the coarsest (OIML R 111-1:2004).</summary>
public enum WeightClass
{
    /// <summary>Class E1.</summary>
    E1,

    /// <summary>Class E2.</summary>
    E2,

    /// <summary>Class F1: for analytical balances.</summary>
    F1,

    /// <summary>Class F2: for milligram balances.</summary>
    F2,

    /// <summary>Class M1: for centigram balances.</summary>
    M1,

    /// <summary>Class M2.</summary>
    M2,

    /// <summary>Class M3: slotted and school weights at best.</summary>
    M3,
}
