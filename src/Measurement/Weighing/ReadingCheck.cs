namespace Calx.Measurement.Weighing;

/// <summary>Whether a balance can have shown the digits that a person wrote down.</summary>
public abstract record ReadingCheck
{
    private ReadingCheck()
    {
    }

    /// <summary>The balance shows exactly such digits.</summary>
    public sealed record Shown : ReadingCheck;

    /// <summary>The number is one that the balance shows, but zeros at its end were not written.</summary>
    /// <param name="Expected">How many decimals the display has.</param>
    /// <param name="Reason">What is wrong, for a person.</param>
    public sealed record ZerosNotWritten(int Expected, string Reason) : ReadingCheck;

    /// <summary>More decimals were written than the display has.</summary>
    /// <param name="Expected">How many decimals the display has.</param>
    /// <param name="Reason">What is wrong, for a person.</param>
    public sealed record TooManyDecimals(int Expected, string Reason) : ReadingCheck;

    /// <summary>The display goes in steps of 2 or 5 (or in tens) and never stops at this number.</summary>
    /// <param name="StepInGrams">The display's step.</param>
    /// <param name="Reason">What is wrong, for a person.</param>
    public sealed record BetweenSteps(decimal StepInGrams, string Reason) : ReadingCheck;
}
