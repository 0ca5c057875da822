using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>A number of the procedure that must lie in a range to have a meaning.</summary>
/// <param name="Formula">Its formula over parameters.</param>
/// <param name="IsShare">Whether it is a share, 0 to 1; otherwise it is a mass.</param>
/// <param name="MayBeNothing">Whether a mass of 0 has a meaning.</param>
/// <param name="At">Where its event stands.</param>
internal sealed record DrawnUse(Expression Formula, bool IsShare, bool MayBeNothing, FilePosition At)
{
    /// <summary>A rounding error beyond the end of a range is none.</summary>
    private const double Slack = 1e-9;

    /// <summary>Whether a value has a meaning.</summary>
    public bool Fits(double value) => IsShare ? value >= -Slack && value <= 1 + Slack : MayBeNothing ? value >= -Slack : value > 0;

    /// <summary>What it must be, in words.</summary>
    public string Range => IsShare ? "a share, from 0 to 1" : MayBeNothing ? "a mass, not below 0 g" : "a mass above 0 g";

    /// <summary>All of a procedure.</summary>
    public static IEnumerable<DrawnUse> All(IEnumerable<ProcedureEvent> events) => events.SelectMany(Of);

    private static IEnumerable<DrawnUse> Of(ProcedureEvent step) => step switch
    {
        AddEvent add => [new(add.Mass, false, false, add.At), .. add.With.Select(w => new DrawnUse(w.Share, true, true, add.At))],
        WetEvent wet => [new(wet.Water, false, true, wet.At)],
        GainEvent gain => [new(gain.Mass, false, true, gain.At)],
        MoveEvent move => [new(move.Share, true, true, move.At)],
        LoseEvent lose => [new(lose.Share, true, true, lose.At)],
        DryEvent dry => [new(dry.Share, true, true, dry.At)],
        ReactEvent react => Of(react),
        RepeatEvent repeat => All(repeat.Do),
        _ => [],
    };

    private static IEnumerable<DrawnUse> Of(ReactEvent react) =>
    [
        .. react.Progress is ReactionProgress.Fraction fraction ? [new DrawnUse(fraction.Amount, true, true, react.At)] : Array.Empty<DrawnUse>(),
        .. react.Escapes is null ? [] : new[] { new DrawnUse(react.Escapes, true, true, react.At) },
        .. react.Cap is null ? [] : new[] { new DrawnUse(react.Cap, false, true, react.At) },
    ];
}
