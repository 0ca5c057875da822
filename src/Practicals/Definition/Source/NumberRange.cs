using Calx.Measurement.Weighing;

namespace Calx.Practicals.Definition.Source;

/// <summary>The numbers that a key takes.</summary>
/// <param name="Words">How they are called in a fault.</param>
/// <param name="Holds">Whether a number is one of them.</param>
internal sealed record NumberRange(string Words, Func<double, bool> Holds)
{
    /// <summary>Any number.</summary>
    public static NumberRange Any { get; } = new("a number", _ => true);

    /// <summary>Above 0.</summary>
    public static NumberRange AboveZero { get; } = new("a number above 0", x => x > 0);

    /// <summary>0 and above.</summary>
    public static NumberRange FromZero { get; } = new("a number from 0", x => x >= 0);

    /// <summary>What the scale of an instrument goes by.</summary>
    public static NumberRange Step { get; } = new("1, 2 or 5 times a power of ten, such as 0.5", ScaleInterval.IsOne);

    /// <summary>A share or a probability.</summary>
    public static NumberRange Share { get; } = new("a number from 0 to 1", x => x is >= 0 and <= 1);

    /// <summary>How full a vessel is drawn: neither empty nor to the brim.</summary>
    public static NumberRange Filling { get; } = new("a number from 0.05 to 0.9", x => x is >= 0.05 and <= 0.9);

    /// <summary>A share that is not nothing.</summary>
    public static NumberRange ShareAboveZero { get; } = new("a number above 0 up to 1", x => x is > 0 and <= 1);
}
