using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>A number of the procedure that must lie in a range to have a meaning.</summary>
/// <param name="Formula">Its formula over parameters.</param>
/// <param name="IsShare">Whether it is a share, 0 to 1; otherwise it is a mass.</param>
/// <param name="At">Where its event stands.</param>
internal sealed record DrawnUse(Expression Formula, bool IsShare, FilePosition At)
{
    /// <summary>A rounding error beyond the end of a range is none.</summary>
    private const double Slack = 1e-9;

    /// <summary>Whether a value has a meaning.</summary>
    public bool Fits(double value) => IsShare ? value >= -Slack && value <= 1 + Slack : value >= -Slack;

    /// <summary>What it must be, in words.</summary>
    public string Range => IsShare ? "a share, from 0 to 1" : "a mass, not below 0 g";

    /// <summary>All of a procedure.</summary>
    public static IEnumerable<DrawnUse> All(IEnumerable<ProcedureEvent> events) => events.SelectMany(Of);

    private static IEnumerable<DrawnUse> Of(ProcedureEvent step) => step switch
    {
        // What is put in may be nothing where all goes well, such as a film on a strip.
        AddEvent add => [new(add.Mass, false, add.At), .. add.With.Select(w => new DrawnUse(w.Share, true, add.At))],
        WetEvent wet => [new(wet.Water, false, wet.At)],
        // A balance drifts either way, so that a gain may be a loss.
        MoveEvent move => [new(move.Share, true, move.At)],
        LoseEvent lose => [new(lose.Share, true, lose.At)],
        DryEvent dry => [new(dry.Share, true, dry.At)],
        ReactEvent react => Of(react),
        RepeatEvent repeat => All(repeat.Do),
        _ => [],
    };

    private static IEnumerable<DrawnUse> Of(ReactEvent react) =>
    [
        .. react.Progress is ReactionProgress.Fraction fraction ? [new DrawnUse(fraction.Amount, true, react.At)] : Array.Empty<DrawnUse>(),
        .. react.Escapes is null ? [] : new[] { new DrawnUse(react.Escapes, true, react.At) },
        .. react.Cap is null ? [] : new[] { new DrawnUse(react.Cap, false, react.At) },
    ];
}
