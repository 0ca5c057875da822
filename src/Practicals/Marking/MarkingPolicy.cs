namespace Calx.Practicals.Marking;

/// <summary>What becomes of a value that was rounded too far on the way but rightly used.</summary>
public enum EarlyRounding
{
    /// <summary>It counts as right.</summary>
    Accept,

    /// <summary>It costs one mark, once a paper.</summary>
    OneMarkOff,
}

/// <summary>How strictly a class is marked: the teacher's choice.</summary>
/// <param name="EarlyRounding">What becomes of a value rounded too far on the way.</param>
/// <param name="FiguresPenalty">Marks lost, once a paper, where an answer has too few or far too many figures; 0 or 1.</param>
/// <param name="UnitPenalty">Marks lost, once a paper, where a wrong unit is written; 0 or 1. No unit at all costs only where units were asked for.</param>
/// <param name="UnitsAsked">Whether students were asked to write units: not where the sheet's heading has them.</param>
public sealed record MarkingPolicy(
    EarlyRounding EarlyRounding = EarlyRounding.Accept, int FiguresPenalty = 1, int UnitPenalty = 1, bool UnitsAsked = false)
{
    /// <summary>Early rounding accepted; one mark for figures and one for units a paper; units stand in the headings.</summary>
    public static MarkingPolicy Usual { get; } = new();
}
