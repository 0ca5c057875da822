namespace Calx.Practicals.Watching;

/// <summary>Checks of minutes since the lesson began.</summary>
internal static class Minutes
{
    /// <summary>The minute itself; what happened before the bell may be negative.</summary>
    public static double Finite(double minute, string name) =>
        double.IsFinite(minute) ? minute : throw new ArgumentException("A finite number of minutes is expected.", name);

    /// <summary>The same where it may be unknown.</summary>
    public static double? Finite(double? minute, string name) => minute is double known ? Finite(known, name) : null;
}
