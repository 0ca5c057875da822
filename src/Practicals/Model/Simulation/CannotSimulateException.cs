namespace Calx.Practicals.Model.Simulation;

/// <summary>A class cannot be invented as it was asked for; the message says why, in a clause for people.</summary>
public sealed class CannotSimulateException : Exception
{
    private CannotSimulateException(string reason)
        : base(reason)
    {
    }

    /// <summary>A cause that was to count in a group moved the result by too little each time it was drawn, or not by itself: on
    /// this balance it cannot be shown.</summary>
    internal static CannotSimulateException CauseTooSmall(string cause, int attempts) =>
        new(FormattableString.Invariant($"'{cause}' alone moved no result by enough to count on this balance, in {attempts} groups drawn"));

    /// <summary>The sample's mass was given, and nothing that is put in is the sample.</summary>
    internal static CannotSimulateException NoSample(string practical) =>
        new($"nothing that is put in is the sample of '{practical}' by itself, so its mass cannot be set");

    /// <summary>An amount is never above 0.</summary>
    internal static CannotSimulateException NoAmount(string parameter) =>
        new($"the law of '{parameter}' never gives an amount above 0");
}
