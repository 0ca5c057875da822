namespace Calx.Practicals.Clock;

/// <summary>What a lesson goes by besides its route.</summary>
/// <param name="BreakShare">Probability that a group's vessel breaks in the lesson.</param>
/// <param name="Spares">Vessels in reserve.</param>
/// <param name="StartAgainBy">The minute after which a group that lost its vessel joins another group's data instead of
/// starting again.</param>
/// <param name="LastHeating">The minute after which nobody heats again.</param>
internal sealed record LessonRules(double BreakShare, int Spares, double StartAgainBy, double LastHeating = double.PositiveInfinity)
{
    /// <summary>Nothing breaks.</summary>
    public static LessonRules Unbroken { get; } = new(0, 0, 0);
}
