namespace Calx.Practicals.Inference.Concluding;

/// <summary>How readings bear on a conclusion.</summary>
public enum Bearing
{
    /// <summary>They do not decide.</summary>
    Open,

    /// <summary>They lead to what the practical says is right.</summary>
    Right,

    /// <summary>They lead to something else.</summary>
    Wrong,
}
