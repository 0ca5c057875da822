namespace Calx.Practicals.Clock;

/// <summary>The minutes after which something is begun no more, each with nine chances in ten that a group which begins it
/// then is done in time; null where the plan has no such thing.</summary>
/// <param name="FirstHeating">'Last heating starts by' for a group that has not heated yet.</param>
/// <param name="Reheat">The same for one that heats again.</param>
/// <param name="NewTrial">The same for one that begins a trial, or starts again with another vessel.</param>
public sealed record LastCalls(double? FirstHeating, double? Reheat, double? NewTrial)
{
    /// <summary>The one that a class hears: of the last heating that the plan has.</summary>
    public double? Heating => Reheat ?? FirstHeating;
}
