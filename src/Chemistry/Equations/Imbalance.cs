namespace Calx.Chemistry.Equations;

/// <summary>An element, or charge, that differs between the two sides of an equation.</summary>
/// <param name="What">The element's name, or <c>charge</c>.</param>
/// <param name="Left">Atoms (or elementary charges) on the left.</param>
/// <param name="Right">The same on the right.</param>
public sealed record Imbalance(string What, long Left, long Right)
{
    /// <summary>The difference as a person reads it: <c>oxygen: 2 on the left, 1 on the right</c>.</summary>
    public override string ToString() => What == ConservedAmounts.Charge
        ? $"charge: {Signed(Left)} on the left, {Signed(Right)} on the right"
        : FormattableString.Invariant($"{What}: {Left} on the left, {Right} on the right");

    private static string Signed(long charge)
        => charge > 0 ? FormattableString.Invariant($"+{charge}") : FormattableString.Invariant($"{charge}");
}
